/** A clock that starts at any moment and runs at any speed, up to a moment it does not pass. */
export class PacedClock {
  readonly #real: () => number;
  #speed = 0;
  #limit = Number.POSITIVE_INFINITY;
  #from: number;
  #at: number;

  /** It stands until it is told to run. @param at milliseconds since the epoch */
  constructor(at: number, real: () => number = () => performance.now()) {
    this.#real = real;
    this.#from = real();
    this.#at = at;
  }

  /** Milliseconds since the epoch. */
  now(): number {
    const passed = (this.#real() - this.#from) * this.#speed;
    return Math.floor(Math.min(this.#at + passed, this.#limit));
  }

  /**
   * Runs on from here, up to a limit where one is given.
   * @param speed how many times faster than the real clock, above 0
   * @returns real milliseconds until the limit
   */
  run(speed: number, limit = Number.POSITIVE_INFINITY): number {
    this.#set(this.now());
    this.#speed = speed;
    this.#limit = limit;
    return Math.max(0, (limit - this.#at) / speed);
  }

  /** Goes on to the limit, if it is not there yet, and stands. */
  arrive(): void {
    this.#set(this.#limit);
    this.#speed = 0;
  }

  #set(at: number): void {
    this.#from = this.#real();
    this.#at = at;
  }
}
