/** What the listener is doing, for the eyes. */

import type { RecogniserKind, Trouble, Utterance } from "./recogniser.ts";

export type ListenerState =
  | { is: "off" }
  | { is: "starting" | "listening"; kind: RecogniserKind }
  | { is: "held"; because: "speaking" | "hidden" }
  /** `until` in milliseconds since the epoch. */
  | { is: "waiting"; kind: RecogniserKind; until: number; trouble: Trouble }
  /** Stopped until the angler starts it again. */
  | { is: "refused"; kind: RecogniserKind; trouble: Trouble }
  /** This device offers nothing to hear with. */
  | { is: "unavailable"; trouble: Trouble };

export interface ListenerEvents {
  onState(state: ListenerState): void;
  onInterim(text: string): void;
  onUtterance(utterance: Utterance): void;
  /** Every trouble, the normal ones too, for the log of troubles. */
  onTrouble(trouble: Trouble, kind: RecogniserKind): void;
}
