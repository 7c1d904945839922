/** A clock that never runs backwards and never stands still, whatever the wall clock does. */
export class SteadyClock {
  readonly #wall: () => number;
  readonly #ticks: () => number;
  #lastNow = Number.NEGATIVE_INFINITY;
  #lastTicks = 0;
  #lastStamp = Number.NEGATIVE_INFINITY;

  /**
   * @param wall milliseconds since the epoch; may be set back and forth
   * @param ticks milliseconds since some moment; only runs forward, but may sleep with the phone
   */
  constructor(wall: () => number = Date.now, ticks: () => number = () => performance.now()) {
    this.#wall = wall;
    this.#ticks = ticks;
  }

  /**
   * The time to write into an event, in whole milliseconds since the epoch; never less than one
   * given before, nor than `notBefore`.
   * @param spokenAt when it was said by the wall clock; its age counts, so that a clock set back in
   *   the meantime does not
   */
  stamp(spokenAt?: number, notBefore = Number.NEGATIVE_INFINITY): number {
    const now = this.#now(notBefore);
    const age = spokenAt === undefined ? 0 : Math.max(0, this.#wall() - spokenAt);
    this.#lastStamp = Math.max(Math.floor(now - age), this.#lastStamp, notBefore);
    return this.#lastStamp;
  }

  /** The wall's time, or where it was set back the last one and the ticks since. */
  #now(notBefore: number): number {
    const ticks = this.#ticks();
    const now = Math.max(this.#wall(), this.#lastNow + ticks - this.#lastTicks, notBefore);
    this.#lastNow = now;
    this.#lastTicks = ticks;
    return now;
  }
}
