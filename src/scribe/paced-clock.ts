/** A clock that starts at any moment and runs at any speed. */
export class PacedClock {
  readonly #real: () => number;
  #speed = 0;
  #from: number;
  #at: number;

  /** It stands until it is given a speed. @param at milliseconds since the epoch */
  constructor(at: number, real: () => number = () => performance.now()) {
    this.#real = real;
    this.#from = real();
    this.#at = at;
  }

  /** Milliseconds since the epoch. */
  now(): number {
    return Math.floor(this.#at + (this.#real() - this.#from) * this.#speed);
  }

  /** Real milliseconds until it gets there; 0 if it has. */
  wait(until: number): number {
    return Math.max(0, (until - this.now()) / this.#speed);
  }

  /** Goes there at once where it is behind: timers are often late, never early. */
  reach(at: number): void {
    if (at > this.now()) this.#reset(at);
  }

  /** @param speed how many times faster than the real clock; 0 stands */
  setSpeed(speed: number): void {
    this.#reset(this.now());
    this.#speed = speed;
  }

  #reset(at: number): void {
    this.#from = this.#real();
    this.#at = at;
  }
}
