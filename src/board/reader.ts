/** Reading a board: all that was said on it, then what is said now. Whoever draws it sees this alone. */
import type { Message } from "./message.ts";

/** Where a message stands on the board; the server vouches for all of it. */
export interface From {
  /** The one seat that may write there. */
  seat: string;
  subject: string;
  /** Its place on the board, counting up from 1. */
  place: number;
  /** When the server took it, milliseconds since the epoch by the server's clock. */
  at: number;
}

/**
 * Called once for each message, in the board's order; a phone may have sent the same event in two of
 * them. @param message undefined for one that is damaged
 */
export type Receive = (from: From, message: Message | undefined) => void;

export interface BoardReader {
  /** Reads from the beginning, and through lost connections on, until it is stopped. */
  start(receive: Receive): void;
  stop(): void;
}
