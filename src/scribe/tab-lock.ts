/** Only one tab listens: two would cut each other off (web-speech-api#115). */
export class TabLock {
  readonly #name: string;
  #release: (() => void) | undefined;

  constructor(name: string) {
    this.#name = name;
  }

  /** True once this tab has it; false while another has. Where browsers have no locks, always true. */
  async take(): Promise<boolean> {
    const { locks } = navigator as Partial<Navigator>;
    if (!locks || this.#release) return true;
    return new Promise((resolve) => {
      const held = (lock: Lock | null) => {
        resolve(lock !== null);
        return lock === null ? undefined : this.#untilReleased();
      };
      locks.request(this.#name, { ifAvailable: true }, held).catch(() => resolve(true));
    });
  }

  /**
   * Whether this tab may act for all: it has the lock, or no tab has and this one is in sight. Where
   * browsers have no locks, always.
   */
  async isOurs(): Promise<boolean> {
    const { locks } = navigator as Partial<Navigator>;
    if (!locks || this.#release) return true;
    const { held = [] } = await locks.query();
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
