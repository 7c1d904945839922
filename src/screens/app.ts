/**
 * What the screens see and may do. main.tsx makes it; a screen knows nothing of stores, recognisers
 * or how a phrase is read.
 */
import type { ReadonlySignal } from "@preact/signals";
import type { EntryStatement, Plan } from "../log/event.ts";
import type { Entry, Net, Session } from "../log/session.ts";
import type { SessionSpan } from "../log/store.ts";
import type { Hearing, Keeping, LastHeard, PossibleReading } from "../scribe/news.ts";
import type { Settings } from "../scribe/settings.ts";
import type { Board } from "./app/board.ts";
import type { EarsCare } from "./app/ears-care.ts";
import type { Home } from "./app/home.ts";
import type { PassOn } from "./app/pass-on.ts";
import type { Past } from "./app/past.ts";
import type { PutRight } from "./app/put-right.ts";
import type { Season } from "./app/season.ts";
import type { VoiceCare } from "./app/voice.ts";

export type { Hearing, Keeping, LastHeard, PossibleReading, Settings };

export interface App {
  session: ReadonlySignal<Session>;
  sessions: ReadonlySignal<readonly SessionSpan[]>;
  hearing: ReadonlySignal<Hearing>;
  interim: ReadonlySignal<string>;
  lastHeard: ReadonlySignal<LastHeard | undefined>;
  keeping: ReadonlySignal<Keeping>;
  /** A reminder that is due, in words; cleared by the next thing said. */
  nudge: ReadonlySignal<string | undefined>;
  settings: ReadonlySignal<Settings>;
  /** Milliseconds since the epoch, moving once a second. */
  now: ReadonlySignal<number>;
  /** The screen stays on while a session runs. */
  isAwake: ReadonlySignal<boolean>;
  /** The sample session is open, played to its end when `done` is `of`; undefined when it is not. */
  sample: ReadonlySignal<{ done: number; of: number } | undefined>;
  /** A new version waits; it is taken only when no session runs. */
  updateWaiting: ReadonlySignal<boolean>;

  past: Past;
  season: Season;
  /** The phone that the app lives on. */
  home: Home;
  /** The ears inside the app, and getting ready for no signal. */
  earsCare: EarsCare;
  voice: VoiceCare;

  startListening(): void;
  stopListening(): void;
  /** Does the same as speaking. */
  type(text: string): Promise<void>;
  /** Does the same as saying "scratch that", call word or not. */
  takeBack(): Promise<void>;

  /** What the entry should have been; one that was marked for a look is settled by it. */
  correct(entry: Entry, statement: EntryStatement, at?: number): Promise<void>;
  /** The first part stays in the entry's place, the others follow it. */
  split(entry: Entry, parts: readonly EntryStatement[]): Promise<void>;
  /** The statement takes the place of both, where the first stands. */
  join(first: Entry, second: Entry, statement: EntryStatement): Promise<void>;
  withdraw(entry: Entry): Promise<void>;
  restore(entry: Entry): Promise<void>;
  settle(entry: Entry): Promise<void>;
  /** Makes entries out of a line that was heard and not taken. */
  adopt(heardId: string, statements: readonly EntryStatement[], at?: number): Promise<void>;
  addEntry(statement: EntryStatement, at: number): Promise<void>;
  weigh(net: number, weightG: number): Promise<void>;
  /** Takes back what the scales said of the net. */
  unweigh(net: Net): Promise<void>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  putRight: PutRight;
  canUndo: ReadonlySignal<boolean>;
  canRedo: ReadonlySignal<boolean>;
  /** The best few readings of an entry's or heard line's words, best first. */
  readings(heard: {
    text: string;
    alternatives?: readonly string[] | undefined;
  }): PossibleReading[];

  setPlan(plan: Plan): Promise<void>;
  setSettings(settings: Partial<Settings>): void;
  newSession(): void;
  openSession(id: string): Promise<void>;
  /** @param speed how many times faster than it was fished */
  playSample(speed: number): Promise<void>;
  /** Leaves the sample for the angler's own session. */
  stopSample(): void;

  passOn: PassOn;
  /** A board that several phones share. */
  board: Board;
  takeUpdate(): void;
}
