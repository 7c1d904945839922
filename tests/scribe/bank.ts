/** A scribe over a log in memory, with a clock that stands until it is moved. */
import type { PastSession } from "../../src/analysis/seasons/past.ts";
import { SteadyClock } from "../../src/log/clock.ts";
import type { Plan } from "../../src/log/event.ts";
import { Keeper } from "../../src/log/keeper.ts";
import type { StoreReason } from "../../src/log/trouble.ts";
import { byHand } from "../../src/scribe/by-hand.ts";
import { Notebook } from "../../src/scribe/notebook.ts";
import { Scribe, type Spoken } from "../../src/scribe/scribe.ts";
import { DEFAULT_SETTINGS, type Settings } from "../../src/scribe/settings.ts";
import type { Answer } from "../../src/speech/talkback.ts";
import { FailingStore } from "../log/failing-store.ts";

export const NINE = Date.UTC(2026, 5, 6, 9, 0, 0);
export const MINUTE_MS = 60_000;

export class Bank {
  now = NINE;
  settings: Settings = DEFAULT_SETTINGS;
  /** The entry on the screen, by its id. */
  inQuestion: string | undefined;
  past: readonly PastSession[] = [];
  readonly told: Answer[] = [];
  readonly reminded: string[] = [];
  readonly store: FailingStore;
  readonly keeper: Keeper;
  readonly notebook: Notebook;
  readonly hand: ReturnType<typeof byHand>;
  scribe: Scribe;

  constructor(failing?: StoreReason) {
    const wall = () => this.now;
    const clock = new SteadyClock(wall, wall);
    this.store = new FailingStore(clock, failing);
    this.keeper = new Keeper(this.store, clock);
    this.notebook = new Notebook("a-session", this.store, this.keeper);
    this.hand = byHand(() => this.notebook);
    this.scribe = this.newScribe();
  }

  /** As after a reload: what was said before is in the log, not in the scribe. */
  newScribe(): Scribe {
    return new Scribe({
      notebook: this.notebook,
      trouble: () => this.keeper.keeping.trouble?.message,
      settings: () => this.settings,
      setLevel: (talkback) => {
        this.settings = { ...this.settings, talkback };
      },
      past: () => this.past,
      now: () => this.now,
      tell: (answer) => this.told.push(answer),
      warn: (answer) => this.told.push(answer),
      remind: (words) => this.reminded.push(words),
      inQuestion: () => this.inQuestion,
    });
  }

  get session() {
    return this.notebook.session.value;
  }

  get entries() {
    return this.session.entries.map(({ statement }) => statement);
  }

  /** The last thing told. */
  get answer(): Answer | undefined {
    return this.told.at(-1);
  }

  /** Says lines one after the other, a minute apart. */
  async say(...lines: string[]) {
    for (const line of lines) {
      await this.hear({ alternatives: [line], by: "web" });
      this.now += MINUTE_MS;
    }
  }

  hear(spoken: Spoken) {
    return this.scribe.hear(spoken);
  }

  /** The short answer to a question. */
  async ask(question: string): Promise<string | undefined> {
    const told = this.told.length;
    await this.hear({ alternatives: [question], by: "web" });
    return this.told[told]?.short;
  }

  plan(plan: Plan) {
    return this.hand.setPlan(plan);
  }

  /** Moves the clock and lets the scribe look, as it does every second. */
  wait(minutes: number) {
    this.now += minutes * MINUTE_MS;
    this.scribe.look();
  }
}
