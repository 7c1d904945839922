/** What the screens see of a shared board, and may do about it. */
import type { ReadonlySignal } from "@preact/signals";
import type { Membership, Shares, Standing } from "../../board/membership.ts";
import type { BoardRow, BoardView } from "../../board/picture/view.ts";
import type { Reading, Sending } from "../../scribe/board/news.ts";

export type { BoardRow, BoardView, Membership, Reading, Sending, Shares, Standing };

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
