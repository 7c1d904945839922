import { type ReadonlySignal, signal } from "@preact/signals";

/** Some phones never tell that the new version is in charge. */
const TAKE_OVER_LIMIT_MS = 2000;

/** Watches for a newer version of the app, and takes it when told to. */
export class NewVersion {
  readonly isWaiting: ReadonlySignal<boolean>;
  readonly #isWaiting = signal(false);
  #take: (() => void) | undefined;

  constructor() {
    this.isWaiting = this.#isWaiting;
  }

  /** @param worker the service worker's address */
  async watch(worker: string): Promise<void> {
    if (!("serviceWorker" in navigator)) return;
    const { Workbox } = await import("workbox-window");
    const workbox = new Workbox(worker);
    workbox.addEventListener("waiting", () => {
      this.#isWaiting.value = true;
    });
    this.#take = () => {
      workbox.addEventListener("controlling", () => location.reload());
      workbox.messageSkipWaiting();
      setTimeout(() => location.reload(), TAKE_OVER_LIMIT_MS);
    };
    // Without it the app works as well, only not without a signal.
    await workbox.register().catch(() => {});
  }

  take(): void {
    this.#take?.();
  }
}
