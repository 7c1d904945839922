/**
 * Keeps one recogniser hearing for hours. After every event it looks at how things stand and does
 * what follows from that (`#settle`), so that no order of events leaves it stuck. Never two
 * recognisers run at once: one must have ended before any is started.
 */

import { Alarm, type Clock, systemClock } from "./clock.ts";
import type { ListenerEvents, ListenerState } from "./listener-state.ts";
import { browserPage, type Page } from "./page.ts";
import type { Recogniser, RecogniserEars, Trouble, Utterance } from "./recogniser.ts";
import { type Choose, chooseFirstReady, Standing } from "./standing.ts";

export const BETWEEN_STARTS_MS = 1_000;
/** The voice goes on sounding for a while after its end has been reported. */
export const ECHO_MS = 1_000;

export interface ListenerOptions {
  /** Most preferred first, one of a kind. */
  recognisers: readonly Recogniser[];
  events: ListenerEvents;
  clock?: Clock;
  page?: Page;
  choose?: Choose;
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
  readonly #choose: Choose;
  readonly #alarm: Alarm;
  #state: ListenerState = { is: "off" };
  #unwatch: (() => void) | undefined;
  #phrases: readonly string[] = [];
  #run: Run | undefined;
  #startedAt = Number.NEGATIVE_INFINITY;
  #speaking = false;
  #heldAt = 0;
  #echoUntil = Number.NEGATIVE_INFINITY;

  constructor(options: ListenerOptions) {
    this.#standings = options.recognisers.map((recogniser) => new Standing(recogniser));
    this.#events = options.events;
    this.#clock = options.clock ?? systemClock;
    this.#page = options.page ?? browserPage;
    this.#choose = options.choose ?? chooseFirstReady;
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
    });
    this.#settle();
  }

  stop(): void {
    this.#unwatch?.();
    this.#unwatch = undefined;
    this.#settle();
  }

  /** Stops hearing while the device itself speaks. */
  hold(): void {
    if (!this.#speaking) this.#heldAt = this.#clock.now();
    this.#speaking = true;
    this.#settle();
  }

  /** Hears again once the voice has died away. */
  release(): void {
    if (!this.#speaking) return;
    this.#speaking = false;
    this.#echoUntil = this.#clock.elapsed() + ECHO_MS;
    this.#settle();
  }

  /** Words to expect, most telling first; taken up at the next start, a matter of seconds. */
  expect(phrases: readonly string[]): void {
    this.#phrases = phrases;
  }

  get #wanted(): boolean {
    return this.#unwatch !== undefined;
  }

  get #heldBecause(): "speaking" | "hidden" | undefined {
    if (this.#page.hidden) return "hidden";
    return this.#speaking || this.#clock.elapsed() < this.#echoUntil ? "speaking" : undefined;
  }

  #visibilityChanged(): void {
    if (this.#page.hidden) this.#settle();
    else this.#retryNow();
  }

  #retryNow(): void {
    for (const standing of this.#standings) standing.retryNow();
    this.#preferBetter();
    this.#settle();
  }

  #settle(): void {
    this.#alarm.clear();
    const because = this.#heldBecause;
    if (!this.#wanted || because) {
      this.#stopRun();
      this.#show(this.#wanted && because ? { is: "held", because } : { is: "off" });
      if (!this.#speaking) this.#wakeAt(this.#echoUntil);
    } else if (this.#run) {
      const { stopping, listened, standing } = this.#run;
      this.#show({ is: listened && !stopping ? "listening" : "starting", kind: standing.kind });
    } else {
      this.#startNext();
    }
  }

  #startNext(): void {
    const next = this.#choose(this.#standings, this.#clock.elapsed());
    if (!next) {
      this.#show(this.#impasse());
      return;
    }
    const startAt = Math.max(next.readyAt, this.#startedAt + BETWEEN_STARTS_MS);
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
    this.#startedAt = this.#clock.elapsed();
    this.#show({ is: "starting", kind: standing.kind });
    standing.recogniser.expect(this.#phrases);
    standing.recogniser.start(this.#earsOf(run));
  }

  #earsOf(run: Run): RecogniserEars {
    return {
      onListening: () => {
        run.listened = true;
        run.standing.listening();
        this.#settle();
      },
      onInterim: (text) => {
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
    if (!this.#isEcho(utterance)) this.#events.onUtterance(utterance);
    this.#preferBetter();
  }

  /** Words begun before the device spoke are the angler's, even if they come out only now. */
  #isEcho(utterance: Utterance): boolean {
    return this.#heldBecause === "speaking" && utterance.startedAt >= this.#heldAt;
  }

  #ended(run: Run): void {
    const elapsed = this.#clock.elapsed();
    const hasStandIn = this.#standings.some(
      (other) => other !== run.standing && !other.refusal && other.readyAt <= elapsed,
    );
    // A run that was told to stop before it heard has not failed.
    const listened = run.listened || run.stopping;
    run.standing.ended({ trouble: run.trouble, listened }, elapsed, hasStandIn);
    this.#run = undefined;
    this.#settle();
  }

  /** Between two utterances, makes way for a recogniser preferred to the one at work. */
  #preferBetter(): void {
    if (!this.#run) return;
    const best = this.#choose(this.#standings, this.#clock.elapsed());
    if (best && best !== this.#run.standing) this.#stopRun();
  }

  #stopRun(): void {
    if (!this.#run || this.#run.stopping) return;
    this.#run.stopping = true;
    this.#run.standing.recogniser.stop();
  }

  #impasse(): ListenerState {
    const refused = this.#standings.find(({ refusal }) => refusal?.reason !== "unsupported");
    if (refused?.refusal) return { is: "refused", kind: refused.kind, trouble: refused.refusal };
    const detail = this.#standings[0]?.refusal?.detail ?? "no recogniser on this device";
    return { is: "unavailable", trouble: { reason: "unsupported", detail } };
  }

  #show(state: ListenerState): void {
    if (JSON.stringify(state) === JSON.stringify(this.#state)) return;
    this.#state = state;
    this.#events.onState(state);
  }
}
