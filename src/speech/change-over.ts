/** When one recogniser may make way for a better one: between two utterances, and not too often. */

import type { RecogniserKind } from "./recogniser.ts";

/** A signal that comes and goes must not toss the ears to and fro. */
export const STAY_MS = 60_000;
/** So long after the last words somebody may still be in the middle of a sentence. */
export const PAUSE_MS = 1_500;

const LONG_AGO = Number.NEGATIVE_INFINITY;

/** All times on the clock's `elapsed` scale. */
export class ChangeOver {
  #kind: RecogniserKind | undefined;
  #changedAt = LONG_AGO;
  #wordsAt = LONG_AGO;

  began(kind: RecogniserKind, elapsed: number): void {
    if (kind === this.#kind) return;
    this.#kind = kind;
    this.#changedAt = elapsed;
  }

  /** Words that may go on. */
  words(elapsed: number): void {
    this.#wordsAt = elapsed;
  }

  /** What was being said has been delivered. */
  delivered(): void {
    this.#wordsAt = LONG_AGO;
  }

  /** The angler asks for it: it may be at once. */
  hurry(): void {
    this.#changedAt = LONG_AGO;
    this.#wordsAt = LONG_AGO;
  }

  /** From when on. Without a network nobody stays for the sake of staying. */
  allowedFrom(online: boolean): number {
    const stay = online ? this.#changedAt + STAY_MS : LONG_AGO;
    return Math.max(stay, this.#wordsAt + PAUSE_MS);
  }
}
