/** What the page and the ear's worker say to each other. Sound goes straight to the worker, by a port. */
import type { Manner, Suit } from "./suit.ts";

export type ToWorker =
  | { is: "prepare"; base: string; suit: Suit }
  /** The angler's own words are these now, and this his voice. */
  | { is: "learn"; suit: Suit }
  /** Kept utterances, as "heard" brought them, are to be heard anew in another manner. */
  | { is: "try"; sounds: readonly Uint8Array[]; manner: Manner }
  /** Pieces of sound follow on the port, at this rate. */
  | { is: "listen"; sound: MessagePort; rateHz: number }
  | { is: "finish" };

export type FromWorker =
  | { is: "ready" }
  /** Sound arrives; told once a second. */
  | { is: "alive" }
  | { is: "interim"; text: string }
  | Told
  /** In the order of the sounds. */
  | { is: "tried"; tried: readonly Tried[] }
  /** All that was said before "finish" has been delivered. */
  | { is: "finished" }
  | { is: "failed"; detail: string };

/** One utterance. */
export interface Told {
  is: "heard";
  text: string;
  confidence: number;
  /** Milliseconds since the epoch. */
  startedAt: number;
  endedAt: number;
  /** Its sound, where that is asked for: mu-law at the decoder's rate. */
  sound?: Uint8Array;
}

export interface Tried {
  text: string;
  /** See `fit.ts`. */
  fit: number;
}

export interface Piece {
  /** Samples from -1 to 1. */
  samples: Float32Array;
  /** When its last sample was taken, milliseconds since the epoch: a busy worker may be behind. */
  at: number;
}
