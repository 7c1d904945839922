/** What still has to go to a shared board. Everything above sees this interface alone. */
import type { LogEvent } from "./event.ts";

/** An event that waits, by its place in the row. */
export interface Waiting {
  place: number;
  /** Absent where it was taken out of the log since, or turned out damaged. */
  event?: LogEvent;
}

/**
 * Fills with every event that is appended while the phone is on a board, in the event's own
 * transaction. Every promise may fail with a StoreTrouble, and with nothing else.
 */
export interface Outbox {
  /** Keeps that the phone is on a board, and puts in what a session already has. */
  join(membership: unknown, session: string): Promise<void>;
  /** What was kept on joining; undefined while the phone is on no board. */
  joined(): Promise<unknown>;
  /** The longest waiting, in their order. */
  waiting(most: number): Promise<Waiting[]>;
  count(): Promise<number>;
  /** Takes out what the board has. */
  done(places: readonly number[]): Promise<void>;
  /** Takes the phone off its board, and with it all that waits. */
  leave(): Promise<void>;
}
