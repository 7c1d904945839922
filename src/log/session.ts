/**
 * A session as it follows from its events (`fold.ts`). The lists of a session that is kept up to
 * date go on growing: keep numbers from an old one, not its lists.
 */
import type { EntryStatement, Heard, LogEvent, Plan } from "./event.ts";

/** The set-up in force; derived, so that correcting a change corrects every fish after it. */
export interface SetUp {
  rig?: string;
  depthMm?: number;
  distanceMm?: number;
  hook?: number;
  bait?: string;
  baitNote?: string;
  lashMm?: number;
}

export interface Entry {
  id: string;
  at: number;
  statement: EntryStatement;
  verdict: "log" | "check";
  /** A fish's number in the session, counted from 1; an entry of three fish takes three numbers. */
  fishNumber?: number;
  /** The set-up and the net in force when it happened (for a change: after it). */
  setUp: SetUp;
  net: number;
  heard?: Heard;
  group?: string;
  /** The events that made the entry what it is, oldest first. */
  history: readonly LogEvent[];
}

export interface HeardLine {
  id: string;
  at: number;
  heard: Heard;
}

export interface Net {
  number: number;
  count: number;
  /** What was said, added up; fish without a weight add nothing and are counted beside. */
  spokenG: number;
  unweighed: number;
  /** What the scales said, once they did. */
  weighedG?: number;
  /** The events that said so, the last of which counts. */
  weighedBy?: readonly string[];
}

export interface Span {
  from: number;
  /** Absent while it lasts. */
  to?: number;
}

export type SessionState = "ready" | "fishing" | "paused" | "ended";

export interface Session {
  id: string;
  state: SessionState;
  startedAt?: number;
  endedAt?: number;
  pauses: readonly Span[];
  plan: Plan;
  setUp: SetUp;
  /** The net in force, from 1. */
  net: number;
  nets: readonly Net[];
  /** In order of time; withdrawn ones are not among them. */
  entries: readonly Entry[];
  heardLines: readonly HeardLine[];
  /** Entries taken back, newest last; each can come back. */
  withdrawn: readonly Entry[];
  /** Corrections that count, newest last: what undo undoes. */
  corrections: readonly LogEvent[];
  /** Withdrawals of corrections that count, newest last: what redo withdraws. */
  undone: readonly LogEvent[];
  reminder?: { everyMs: number; about?: string; since: number };
  /** Sums over fish that count. */
  count: number;
  spokenG: number;
  unweighed: number;
  lastFishAt?: number;
}
