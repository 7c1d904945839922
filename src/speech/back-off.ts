/** Waits that double from one failure to the next, so that a dead service is not hammered. */

export const FIRST_WAIT_MS = 1_000;
export const LONGEST_WAIT_MS = 30_000;

export class BackOff {
  readonly #firstMs: number;
  readonly #longestMs: number;
  #failures = 0;

  constructor(firstMs = FIRST_WAIT_MS, longestMs = LONGEST_WAIT_MS) {
    this.#firstMs = firstMs;
    this.#longestMs = longestMs;
  }

  /** Milliseconds to wait after one more failure. */
  next(): number {
    const wait = this.#firstMs * 2 ** this.#failures;
    this.#failures += 1;
    return Math.min(wait, this.#longestMs);
  }

  reset(): void {
    this.#failures = 0;
  }
}
