/** Where events are kept. Everything above sees this interface alone. */
import type { Written } from "./device.ts";
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

/** What is kept of a session beside its events; without a digest where something was written since. */
export interface DigestRecord {
  session: string;
  /** Whatever was made of the events; whoever made it knows how to read it. */
  digest?: unknown;
}

/** A session that was taken out, with all that brings it back. */
export interface RemovedSession {
  session: string;
  /** As they were stored, sound or not. */
  events: readonly LogEvent[];
  damaged: readonly DamagedRecord[];
}

export type EventListener = (events: readonly LogEvent[]) => void;
export type RemovalListener = (session: string) => void;

/** What can be made of a session's events again at any time, kept so that it need not be. */
export interface DigestStore {
  /** One record for each session that has events, in no promised order. */
  digests(): Promise<DigestRecord[]>;
  /**
   * Keeps a digest, if the session still has as many events as it was made from.
   * @returns whether it is kept
   */
  keepDigest(session: string, events: number, digest: unknown): Promise<boolean>;
}

/** Taking a session out for good. */
export interface RemovalStore {
  /**
   * Takes a session out with all that is kept of it, here and in other tabs. From then on `put`
   * passes its events over.
   */
  remove(session: string): Promise<RemovedSession>;
  /** Puts a session back as it was. */
  bringBack(removed: RemovedSession): Promise<void>;
  /** The sessions that were taken out here, and have not come back. */
  removals(): Promise<string[]>;
  /** Lets `put` take these sessions in again. */
  readmit(sessions: readonly string[]): Promise<void>;
  /** Tells of sessions taken out, here and in other tabs. Returns the way to stop it. */
  subscribeRemovals(listener: RemovalListener): () => void;
}

/** Every promise may fail with a StoreTrouble, and with nothing else. */
export interface LogStore extends DigestStore, RemovalStore {
  /**
   * Numbers and stores what one utterance said, all of it or nothing, and resolves once that is on
   * disk. A draft whose id is stored already is not stored again.
   * @param signal gives it up: nothing is stored unless it was just being written out
   * @returns the events in the drafts' order
   */
  append(drafts: readonly EventDraft[], signal?: AbortSignal): Promise<LogEvent[]>;
  /**
   * Stores finished events, all or nothing; one whose id is there already stays as it is, and one
   * of a session that was taken out stays out.
   * @returns those that were new
   */
  put(events: readonly LogEvent[]): Promise<LogEvent[]>;
  /** The same for what was written here while nothing could be stored: it has to go to the board. */
  putOwn(events: readonly LogEvent[]): Promise<LogEvent[]>;
  /** What was last written here by `append` or `putOwn`, in any tab; nothing from elsewhere counts. */
  lastWritten(): Promise<Written | undefined>;
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
