/** The time and the timers that hearing and speaking run on; handed in so that tests can drive them. */

export type Timer = ReturnType<typeof setTimeout>;

export interface Clock {
  /** Milliseconds since the epoch; may jump when the device sets its clock. */
  now(): number;
  /** Whole milliseconds since some fixed moment; never runs backwards. Intervals are measured with this. */
  elapsed(): number;
  setTimeout(run: () => void, ms: number): Timer;
  clearTimeout(timer: Timer): void;
}

export const systemClock: Clock = {
  now: () => Date.now(),
  // Browsers' timers count whole milliseconds: against a fraction they seem to fire early.
  elapsed: () => Math.floor(performance.now()),
  setTimeout: (run, ms) => setTimeout(run, ms),
  clearTimeout: (timer) => clearTimeout(timer),
};

/** A timer that can be set anew: at most one run is ever pending. */
export class Alarm {
  readonly #clock: Clock;
  #timer: Timer | undefined;

  constructor(clock: Clock) {
    this.#clock = clock;
  }

  /** Runs once after `ms` milliseconds, in place of whatever was pending. */
  set(run: () => void, ms: number): void {
    this.clear();
    this.#timer = this.#clock.setTimeout(() => {
      this.#timer = undefined;
      run();
    }, ms);
  }

  clear(): void {
    if (this.#timer !== undefined) this.#clock.clearTimeout(this.#timer);
    this.#timer = undefined;
  }
}

/** The promise's value, or `fallback` when it fails or takes longer than `ms` milliseconds. */
export function withinLimit<T>(
  promise: Promise<T>,
  ms: number,
  fallback: T,
  clock: Clock,
): Promise<T> {
  return new Promise((resolve) => {
    const alarm = new Alarm(clock);
    const settle = (value: T) => {
      alarm.clear();
      resolve(value);
    };
    alarm.set(() => resolve(fallback), ms);
    promise.then(settle, () => settle(fallback));
  });
}
