import { type ReadonlySignal, signal } from "@preact/signals";
import { Workbox } from "workbox-window";

/** Some phones never tell that the new version is in charge. */
const TAKE_OVER_LIMIT_MS = 2000;

/** Watches for a newer version of the app, and takes it when told to. */
export class NewVersion {
  readonly isWaiting: ReadonlySignal<boolean>;
  /** Another tab, or this one, has taken it: what this page has still to fetch is gone. */
  readonly isTaken: ReadonlySignal<boolean>;
  readonly #isWaiting = signal(false);
  readonly #isTaken = signal(false);
  #take: (() => void) | undefined;

  constructor() {
    this.isWaiting = this.#isWaiting;
    this.isTaken = this.#isTaken;
    const { serviceWorker } = navigator as Partial<Navigator>;
    let isFirst = !serviceWorker?.controller;
    serviceWorker?.addEventListener("controllerchange", () => {
      // The first to come is of the page's own version.
      if (!isFirst) this.#isWaiting.value = this.#isTaken.value = true;
      isFirst = false;
    });
  }

  /** @param worker the service worker's address */
  async watch(worker: string): Promise<void> {
    if (!("serviceWorker" in navigator)) return;
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
    if (this.#isTaken.value) location.reload();
    else this.#take?.();
  }
}
