/** Waits that double from one failure to the next, so that a dead service is not hammered. */

export const FIRST_WAIT_MS = 1_000;
export const LONGEST_WAIT_MS = 30_000;

export class BackOff {
  #failures = 0;

  /** Milliseconds to wait after one more failure. */
  next(): number {
    const wait = FIRST_WAIT_MS * 2 ** this.#failures;
    this.#failures += 1;
    return Math.min(wait, LONGEST_WAIT_MS);
  }

  reset(): void {
    this.#failures = 0;
  }
}
