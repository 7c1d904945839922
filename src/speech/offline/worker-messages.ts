/** What the page and the ear's worker say to each other. Sound goes straight to the worker, by a port. */
import type { Names } from "./places.ts";

export type ToWorker =
  | { is: "prepare"; base: string; own: Names }
  /** The angler's own words are these now. */
  | { is: "learn"; own: Names }
  /** Pieces of sound follow on the port, at this rate. */
  | { is: "listen"; sound: MessagePort; rateHz: number }
  | { is: "finish" };

export type FromWorker =
  | { is: "ready" }
  /** Sound arrives; told once a second. */
  | { is: "alive" }
  | { is: "interim"; text: string }
  /** Milliseconds since the epoch. */
  | { is: "heard"; text: string; confidence: number; startedAt: number; endedAt: number }
  /** All that was said before "finish" has been delivered. */
  | { is: "finished" }
  | { is: "failed"; detail: string };

export interface Piece {
  /** Samples from -1 to 1. */
  samples: Float32Array;
  /** When its last sample was taken, milliseconds since the epoch: a busy worker may be behind. */
  at: number;
}
