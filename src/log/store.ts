/** Where events are kept. Everything above sees this interface alone. */
import type { EventDraft, LogEvent } from "./event.ts";

/** When a session's first and last events were said, milliseconds since the epoch. */
export interface SessionSpan {
  id: string;
  firstAt: number;
  lastAt: number;
}

/** A stored record that is no event, kept as it was found. */
export interface DamagedRecord {
  record: unknown;
  /** What is wrong with it, in the schema's words. */
  fault: string;
}

export type EventListener = (events: readonly LogEvent[]) => void;

/** Every promise may fail with a StoreTrouble, and with nothing else. */
export interface LogStore {
  /**
   * Numbers and stores what one utterance said, all of it or nothing, and resolves once that is on
   * disk. A draft whose id is stored already is not stored again.
   * @returns the events in the drafts' order
   */
  append(drafts: readonly EventDraft[]): Promise<LogEvent[]>;
  /**
   * Stores finished events, all or nothing; one whose id is there already stays as it is.
   * @returns those that were new
   */
  put(events: readonly LogEvent[]): Promise<LogEvent[]>;
  /** A session's events, in no promised order. */
  session(id: string): Promise<LogEvent[]>;
  /** All sessions, the newest first, without reading their events. */
  sessions(): Promise<SessionSpan[]>;
  /** Every event of every session, in no promised order. */
  everything(): Promise<LogEvent[]>;
  /** Records that turned out not to be events and were set aside. */
  damaged(): Promise<DamagedRecord[]>;
  /** Tells of new events, from here and from other tabs. Returns the way to stop it. */
  subscribe(listener: EventListener): () => void;
  /** Asks the browser not to clear the log away when room gets short; true if it agreed. */
  persist(): Promise<boolean>;
  close(): void;
}
