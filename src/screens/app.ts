/**
 * What the screens see and may do. main.tsx makes it; a screen knows nothing of stores, recognisers
 * or how a phrase is read.
 */
import type { ReadonlySignal } from "@preact/signals";
import type { Amendable } from "../../grammar/statement.ts";
import type { EntryStatement, Plan } from "../log/event.ts";
import type { Entry, Session } from "../log/session.ts";
import type { SessionSpan } from "../log/store.ts";
import type { Hearing, Keeping, LastHeard, PossibleReading } from "../scribe/news.ts";
import type { Settings } from "../scribe/settings.ts";
import type { Home } from "./app/home.ts";

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

  /** The phone that the app lives on. */
  home: Home;

  startListening(): void;
  stopListening(): void;
  /** Does the same as speaking. */
  type(text: string): Promise<void>;
  /** Does the same as saying "scratch that", call word or not. */
  takeBack(): Promise<void>;

  amend(entry: Entry, set: Amendable, clear?: readonly string[]): Promise<void>;
  moveTo(entry: Entry, at: number): Promise<void>;
  replace(entry: Entry, statement: EntryStatement): Promise<void>;
  withdraw(entry: Entry): Promise<void>;
  restore(entry: Entry): Promise<void>;
  settle(entry: Entry): Promise<void>;
  /** Makes entries out of a line that was heard and not taken. */
  adopt(heardId: string, statements: readonly EntryStatement[]): Promise<void>;
  addEntry(statement: EntryStatement, at: number): Promise<void>;
  weigh(net: number, weightG: number): Promise<void>;
  undo(): Promise<void>;
  redo(): Promise<void>;
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

  /** The summary as text for a message; water and peg are in it only where the angler allows it. */
  summaryText(withPlace?: boolean): string;
  /** The same text, by the share sheet where there is one, through the clipboard elsewhere. */
  shareSummary(withPlace?: boolean): Promise<"shared" | "copied" | "cancelled" | "failed">;
  exportLog(): Promise<Blob>;
  importLog(text: string): Promise<{ added: number }>;
  takeUpdate(): void;
}
