/** A clock that stands still until told to go on. */

import type { Clock, Timer } from "../../src/speech/clock.ts";

interface Pending {
  id: number;
  due: number;
  run: () => void;
}

export class FakeClock implements Clock {
  /** Added to the wall time alone, as when a device sets its clock. */
  wallShiftMs = Date.UTC(2026, 4, 2, 8);
  #elapsed = 0;
  #lastId = 0;
  #pending: Pending[] = [];

  now = () => this.#elapsed + this.wallShiftMs;
  elapsed = () => this.#elapsed;

  setTimeout = (run: () => void, ms: number): Timer => {
    this.#lastId += 1;
    this.#pending.push({ id: this.#lastId, due: this.#elapsed + Math.max(0, ms), run });
    return this.#lastId as unknown as Timer;
  };

  clearTimeout = (timer: Timer): void => {
    this.#pending = this.#pending.filter(({ id }) => id !== (timer as unknown as number));
  };

  get pending(): number {
    return this.#pending.length;
  }

  advance(ms: number): void {
    const target = this.#elapsed + ms;
    for (;;) {
      const next = this.#pending.reduce<Pending | undefined>(
        (first, each) => (each.due <= target && (!first || each.due < first.due) ? each : first),
        undefined,
      );
      if (!next) break;
      this.#pending = this.#pending.filter((each) => each !== next);
      this.#elapsed = next.due;
      next.run();
    }
    this.#elapsed = target;
  }
}

/** The same time, counting only the timers set through it. */
export class CountedClock implements Clock {
  readonly #clock: Clock;
  readonly #open = new Set<Timer>();

  constructor(clock: Clock) {
    this.#clock = clock;
  }

  get pending(): number {
    return this.#open.size;
  }

  now = () => this.#clock.now();
  elapsed = () => this.#clock.elapsed();

  setTimeout = (run: () => void, ms: number): Timer => {
    const timer = this.#clock.setTimeout(() => {
      this.#open.delete(timer);
      run();
    }, ms);
    this.#open.add(timer);
    return timer;
  };

  clearTimeout = (timer: Timer): void => {
    this.#open.delete(timer);
    this.#clock.clearTimeout(timer);
  };
}
