/**
 * Keeps one recogniser hearing for hours. After every event it looks at how things stand and does
 * what follows from that (`#settle`), so that no order of events leaves it stuck. Never two
 * recognisers run at once: one must have ended, and delivered what it had, before any is started.
 * What is said between the two, a fraction of a second, nobody hears: the microphone cannot be held
 * by both.
 */

import { ChangeOver } from "./change-over.ts";
import { Alarm, type Clock, systemClock } from "./clock.ts";
import type { ListenerEvents, ListenerState } from "./listener-state.ts";
import { browserPage, type Page } from "./page.ts";
import type {
  Recogniser,
  RecogniserEars,
  RecogniserKind,
  Trouble,
  Utterance,
} from "./recogniser.ts";
import { chooseFirstReady, Standing } from "./standing.ts";

export const BETWEEN_STARTS_MS = 1_000;
/** The voice goes on sounding for a while after its end has been reported. */
export const ECHO_MS = 1_000;

export interface ListenerOptions {
  /** One of a kind. */
  recognisers: readonly Recogniser[];
  events: ListenerEvents;
  /** Those that may hear as things stand, most preferred first; all, in their order, when absent. */
  rank?: () => readonly RecogniserKind[];
  clock?: Clock;
  page?: Page;
}

interface Run {
  standing: Standing;
  listened: boolean;
  trouble: Trouble | undefined;
  stopping: boolean;
}

export class Listener {
  readonly #standings: readonly Standing[];
  readonly #events: ListenerEvents;
  readonly #clock: Clock;
  readonly #page: Page;
  readonly #rank: () => readonly RecogniserKind[];
  readonly #alarm: Alarm;
  readonly #changeOver = new ChangeOver();
  #state: ListenerState = { is: "off" };
  #unwatch: (() => void) | undefined;
  #phrases: readonly string[] = [];
  #run: Run | undefined;
  #awaiting: (() => void)[] = [];
  /** The voice and the player of kept sounds may speak over each other. */
  #speakers = 0;
  #heldAt = 0;
  #echoUntil = Number.NEGATIVE_INFINITY;

  constructor(options: ListenerOptions) {
    this.#standings = options.recognisers.map((recogniser) => new Standing(recogniser));
    this.#events = options.events;
    this.#clock = options.clock ?? systemClock;
    this.#page = options.page ?? browserPage;
    const kinds = options.recognisers.map(({ kind }) => kind);
    this.#rank = options.rank ?? (() => kinds);
    this.#alarm = new Alarm(this.#clock);
  }

  get state(): ListenerState {
    return this.#state;
  }

  /** To be called within a gesture the first time: some browsers ask for one. */
  start(): void {
    for (const standing of this.#standings) standing.forgive();
    this.#unwatch ??= this.#page.watch({
      onVisibility: () => this.#visibilityChanged(),
      onOnline: () => this.#retryNow(),
      onOffline: () => this.#settle(),
    });
    this.#settle();
  }

  stop(): void {
    this.#unwatch?.();
    this.#unwatch = undefined;
    this.#settle();
  }

  /** Resolves once nothing hears any more: what was told to stop still delivers. */
  ended(): Promise<void> {
    return new Promise((done) => {
      if (this.#run) this.#awaiting.push(done);
      else done();
    });
  }

  /** Stops hearing while the device itself speaks. Each speaker holds once, and releases once. */
  hold(): void {
    if (this.#speakers === 0) this.#heldAt = this.#clock.now();
    this.#speakers += 1;
    this.#settle();
  }

  /** Hears again once the last voice has died away. */
  release(): void {
    if (this.#speakers === 0) return;
    this.#speakers -= 1;
    if (this.#speakers > 0) return;
    this.#echoUntil = this.#clock.elapsed() + ECHO_MS;
    this.#settle();
  }

  /** Words to expect, most telling first; taken up at the next start, a matter of seconds. */
  expect(phrases: readonly string[]): void {
    this.#phrases = phrases;
  }

  /** The angler chose other ears, or others can be had now: earlier refusals no longer count. */
  reconsider(): void {
    for (const standing of this.#standings) standing.forgive();
    this.#changeOver.hurry();
    this.#settle();
  }

  get #ranked(): Standing[] {
    return this.#rank().flatMap((kind) => this.#standings.filter((one) => one.kind === kind));
  }

  get #wanted(): boolean {
    return this.#unwatch !== undefined;
  }

  get #heldBecause(): "speaking" | "hidden" | undefined {
    if (this.#page.hidden) return "hidden";
    return this.#speakers > 0 || this.#clock.elapsed() < this.#echoUntil ? "speaking" : undefined;
  }

  #visibilityChanged(): void {
    if (this.#page.hidden) this.#settle();
    else this.#retryNow();
  }

  #retryNow(): void {
    for (const standing of this.#standings) standing.retryNow();
    this.#settle();
  }

  #settle(): void {
    this.#alarm.clear();
    const because = this.#heldBecause;
    if (!this.#wanted || because) {
      this.#stopRun();
      this.#show(this.#wanted && because ? { is: "held", because } : { is: "off" });
      if (this.#speakers === 0) this.#wakeAt(this.#echoUntil);
    } else if (this.#run) {
      const { stopping, listened, standing } = this.#run;
      this.#show({ is: listened && !stopping ? "listening" : "starting", kind: standing.kind });
      this.#makeWay(this.#run);
    } else {
      this.#startNext();
    }
  }

  #startNext(): void {
    const next = chooseFirstReady(this.#ranked, this.#clock.elapsed());
    if (!next) {
      this.#show(this.#impasse());
      return;
    }
    const startAt = Math.max(next.readyAt, next.startedAt + BETWEEN_STARTS_MS);
    const wait = startAt - this.#clock.elapsed();
    if (wait <= 0) {
      this.#begin(next);
      return;
    }
    const { kind, trouble } = next;
    const until = this.#clock.now() + wait;
    this.#show(trouble ? { is: "waiting", kind, until, trouble } : { is: "starting", kind });
    this.#wakeAt(startAt);
  }

  #wakeAt(elapsed: number): void {
    const wait = elapsed - this.#clock.elapsed();
    if (this.#wanted && wait > 0) this.#alarm.set(() => this.#settle(), wait);
  }

  #begin(standing: Standing): void {
    const run = { standing, listened: false, trouble: undefined, stopping: false };
    this.#run = run;
    standing.startedAt = this.#clock.elapsed();
    this.#changeOver.began(standing.kind, standing.startedAt);
    this.#show({ is: "starting", kind: standing.kind });
    standing.recogniser.expect(this.#phrases);
    standing.recogniser.start(this.#earsOf(run));
    if (this.#run === run) this.#makeWay(run);
  }

  #earsOf(run: Run): RecogniserEars {
    return {
      onListening: () => {
        run.listened = true;
        run.standing.listening();
        this.#settle();
      },
      onInterim: (text) => {
        this.#changeOver.words(this.#clock.elapsed());
        if (this.#wanted && !this.#heldBecause) this.#events.onInterim(text);
      },
      onUtterance: (utterance) => this.#heard(run, utterance),
      onTrouble: (trouble) => {
        run.trouble = trouble;
        this.#events.onTrouble(trouble, run.standing.kind);
      },
      onEnd: () => this.#ended(run),
    };
  }

  #heard(run: Run, utterance: Utterance): void {
    run.standing.heard();
    this.#changeOver.delivered();
    if (!this.#isEcho(utterance)) this.#events.onUtterance(utterance);
    this.#settle();
  }

  /** Words begun before the device spoke are the angler's, even if they come out only now. */
  #isEcho(utterance: Utterance): boolean {
    return this.#heldBecause === "speaking" && utterance.startedAt >= this.#heldAt;
  }

  #ended(run: Run): void {
    const elapsed = this.#clock.elapsed();
    const hasStandIn = this.#ranked.some(
      (other) => other !== run.standing && !other.refusal && other.readyAt <= elapsed,
    );
    // A run that was told to stop before it heard has not failed.
    const listened = run.listened || run.stopping;
    run.standing.ended({ trouble: run.trouble, listened }, elapsed, hasStandIn);
    if (run.standing.refusal) this.#fallBackOn(run.standing);
    this.#run = undefined;
    this.#changeOver.delivered();
    for (const done of this.#awaiting.splice(0)) done();
    this.#settle();
  }

  /** One was left alone because another heard in its place, which is refused now: the one is tried at once. */
  #fallBackOn(refused: Standing): void {
    for (const other of this.#standings) if (other !== refused) other.retryNow();
  }

  /** The run makes way for a better recogniser as soon as there is one and it does no harm. */
  #makeWay({ standing, stopping }: Run): void {
    if (stopping) return;
    const elapsed = this.#clock.elapsed();
    const ranked = this.#ranked;
    const best = chooseFirstReady(ranked, elapsed);
    if (best === standing) {
      const better = ranked.slice(0, ranked.indexOf(standing)).filter(({ refusal }) => !refusal);
      for (const { readyAt } of better) this.#wakeAt(readyAt);
      return;
    }
    const from = ranked.includes(standing)
      ? this.#changeOver.allowedFrom(this.#page.online)
      : elapsed;
    if (from > elapsed) this.#wakeAt(from);
    else this.#stopRun();
  }

  #stopRun(): void {
    if (!this.#run || this.#run.stopping) return;
    this.#run.stopping = true;
    this.#run.standing.recogniser.stop();
  }

  #impasse(): ListenerState {
    const ranked = this.#ranked;
    const refused = ranked.find(({ refusal }) => refusal && refusal.reason !== "unsupported");
    if (refused?.refusal) return { is: "refused", kind: refused.kind, trouble: refused.refusal };
    const detail = ranked[0]?.refusal?.detail ?? "no recogniser on this device";
    return { is: "unavailable", trouble: { reason: "unsupported", detail } };
  }

  #show(state: ListenerState): void {
    if (JSON.stringify(state) === JSON.stringify(this.#state)) return;
    this.#state = state;
    this.#events.onState(state);
  }
}
