/** What the screens see of a shared board, and may do about it. */
import type { ReadonlySignal } from "@preact/signals";
import type { Membership, Shares, Standing } from "../../board/membership.ts";
import type { BoardRow, BoardView } from "../../board/picture/view.ts";

export type { BoardRow, BoardView, Membership, Shares, Standing };

/** How what was logged gets to the board. */
export type Sending =
  /** This phone is on no board. */
  | { is: "off" }
  /** Entries still to be sent; none when all are there. */
  | { is: "going"; waiting: number }
  /** The board can't be reached; it is tried again by itself. */
  | { is: "out-of-reach"; waiting: number }
  /** The server won't have it, in a sentence; nothing waiting is lost. */
  | { is: "refused"; waiting: number; why: string };

/** What is known of the board while somebody looks at it. */
export type Reading =
  | { is: "off" }
  /** What is there already is still being read. */
  | { is: "opening" }
  | { is: "live"; view: BoardView }
  /** Out of reach, and tried again by itself; as it looked last. */
  | { is: "out-of-reach"; view: BoardView | undefined }
  | { is: "refused"; why: string };

export interface Board {
  /** Undefined while this phone is on no board. */
  membership: ReadonlySignal<Membership | undefined>;
  sending: ReadonlySignal<Sending>;
  reading: ReadonlySignal<Reading>;
  /** Begins to read the board. @returns ends it */
  follow(): () => void;
  join(membership: Membership): Promise<void>;
  /** Nothing more is sent, and what still waited is dropped; what the board has, it keeps. */
  leave(): Promise<void>;
}
