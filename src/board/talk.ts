/** What the page and the board's worker say to each other. */
import type { Patch } from "./picture/teller.ts";
import type { BoardReason } from "./reasons.ts";

export type ToBoard =
  /** Once, at first: the membership as it is kept. */
  | { do: "begin"; joined: unknown }
  /** Something was logged. */
  | { do: "look" }
  /** Somebody looks at the board, or nobody any more. */
  | { do: "follow"; isOn: boolean }
  /** The network is back. */
  | { do: "hurry" };

export type FromBoard =
  | { is: "sending"; waiting: number; tooLarge: number; trouble?: BoardReason }
  /** Another tab took the phone off the board. */
  | { is: "left" }
  | { is: "opening" }
  /** What has changed since the last one after "opening". */
  | { is: "news"; patch: Patch }
  | { is: "unread"; trouble: BoardReason };
