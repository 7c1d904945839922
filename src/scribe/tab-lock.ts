/** Only one tab listens: two would cut each other off (web-speech-api#115). */
export class TabLock {
  readonly #name: string;
  #release: (() => void) | undefined;
  #taking: Promise<boolean> | undefined;
  /** Settles once the browser has it back, some time after it was released. */
  #lastTaken: Promise<unknown> | undefined;

  constructor(name: string) {
    this.#name = name;
  }

  /** True once this tab has it; false while another has. Where browsers have no locks, always true. */
  async take(): Promise<boolean> {
    const { locks } = navigator as Partial<Navigator>;
    if (!locks) return true;
    // Asked for twice at once, as by two taps, the browser would refuse the second as if it were another tab's.
    this.#taking ??= this.#take(locks).finally(() => {
      this.#taking = undefined;
    });
    return this.#taking;
  }

  async #take(locks: LockManager): Promise<boolean> {
    if (this.#release) return true;
    await this.#lastTaken;
    return new Promise((resolve) => {
      const held = (lock: Lock | null) => {
        resolve(lock !== null);
        return lock === null ? undefined : this.#untilReleased();
      };
      this.#lastTaken = locks
        .request(this.#name, { ifAvailable: true }, held)
        .catch(() => resolve(true));
    });
  }

  /**
   * Whether this tab may act for all: it has the lock, or no tab has and this one is in sight. Where
   * browsers have no locks, always; where they tell of none, as with storage blocked, while in sight.
   */
  async isOurs(): Promise<boolean> {
    const { locks } = navigator as Partial<Navigator>;
    if (!locks || this.#release) return true;
    const { held = [] } = await locks.query().catch((): LockManagerSnapshot => ({}));
    return held.every(({ name }) => name !== this.#name) && !document.hidden;
  }

  release(): void {
    this.#release?.();
    this.#release = undefined;
  }

  #untilReleased(): Promise<void> {
    return new Promise((resolve) => {
      this.#release = resolve;
    });
  }
}
