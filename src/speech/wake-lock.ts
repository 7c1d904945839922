/**
 * Keeps the screen on: a page that goes dark stops hearing. The system takes the lock away when
 * the page is hidden or the battery is low, so it is asked for again whenever the page is shown.
 */

export type WakeLockState = "off" | "asking" | "held" | "lost" | "unsupported";

export interface WakeLockOptions {
  onState(state: WakeLockState): void;
  /** The browser's `navigator.wakeLock`, where it has one. */
  wakeLock?: Pick<WakeLock, "request"> | undefined;
  document?: Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;
}

export class ScreenWakeLock {
  readonly #options: WakeLockOptions;
  readonly #document: NonNullable<WakeLockOptions["document"]>;
  readonly #onVisibility = () => void this.#ask();
  #state: WakeLockState = "off";
  #wanted = false;
  #sentinel: WakeLockSentinel | undefined;

  constructor(options: WakeLockOptions) {
    this.#options = options;
    this.#document = options.document ?? document;
  }

  get state(): WakeLockState {
    return this.#state;
  }

  /** From now on the screen should stay on. */
  keep(): void {
    if (this.#wanted) return;
    this.#wanted = true;
    this.#document.addEventListener("visibilitychange", this.#onVisibility);
    void this.#ask();
  }

  letGo(): void {
    this.#wanted = false;
    this.#document.removeEventListener("visibilitychange", this.#onVisibility);
    const sentinel = this.#sentinel;
    this.#sentinel = undefined;
    sentinel?.release().catch(() => {});
    this.#show("off");
  }

  async #ask(): Promise<void> {
    const { wakeLock } = this.#options;
    if (!wakeLock) {
      this.#show("unsupported");
      return;
    }
    const settled = this.#state === "held" || this.#state === "asking";
    if (settled || this.#document.visibilityState !== "visible") return;
    this.#show("asking");
    try {
      this.#take(await wakeLock.request("screen"));
    } catch {
      // Refused on low power, mostly; the next time the page is shown may go better.
      if (this.#wanted) this.#show("lost");
    }
  }

  #take(sentinel: WakeLockSentinel): void {
    if (!this.#wanted || this.#sentinel) {
      sentinel.release().catch(() => {});
      return;
    }
    this.#sentinel = sentinel;
    sentinel.addEventListener("release", () => {
      if (this.#sentinel !== sentinel) return;
      this.#sentinel = undefined;
      this.#show("lost");
    });
    this.#show("held");
  }

  #show(state: WakeLockState): void {
    if (state === this.#state) return;
    this.#state = state;
    this.#options.onState(state);
  }
}
