/** What the screens are told of a shared board. */
import type { BoardView } from "../../board/picture/view.ts";

/** How what was logged gets to the board. */
export type Sending =
  /** This phone is on no board. */
  | { is: "off" }
  /** The board has not answered yet. */
  | { is: "opening" }
  /** Entries still to be sent; none when all are there. `tooLarge` are among them, with no hope. */
  | { is: "going"; waiting: number; tooLarge: number }
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
