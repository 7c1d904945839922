import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";

const NAME = "pegscribe.at-stake";

/**
 * Whether a new version would do harm now, in this tab or another: the files that an open page has
 * still to fetch go as it comes. A tab with something at stake holds a lock, or waits for it, and both
 * end with the tab, however that ends.
 */
export class AtStake {
  /** In other tabs as it was when last looked at; true until then. */
  readonly anywhere: ReadonlySignal<boolean>;
  readonly #isHeld = signal(true);
  readonly #locks = (navigator as Partial<Navigator>).locks;

  /** @param here whether something is at stake in this tab */
  constructor(here: ReadonlySignal<boolean>) {
    this.anywhere = computed(() => here.value || this.#isHeld.value);
    effect(() => (here.value ? this.#hold() : undefined));
  }

  /** Where the browser has no locks, or lets nobody have one, each tab knows of itself alone. Never fails. */
  async look(): Promise<void> {
    const { held = [] } = (await this.#locks?.query().catch(() => undefined)) ?? {};
    this.#isHeld.value = held.some(({ name }) => name === NAME);
  }

  /** @returns lets go of it */
  #hold(): () => void {
    let letGo = () => {};
    const held = new Promise<void>((done) => {
      letGo = done;
    });
    this.#locks?.request(NAME, () => held).catch(() => {});
    return letGo;
  }
}
