import { type ReadonlySignal, signal } from "@preact/signals";

/** `kept`: the browser has promised not to clear the log away; `may-go`: it has not. */
export type StorageState = "unknown" | "kept" | "may-go";

export interface StoragePromise {
  /** Whether it was given; undefined where the browser does not tell. */
  isGiven(): Promise<boolean | undefined>;
  /** True if it is given. */
  ask(): Promise<boolean>;
}

/** Whether the browser keeps what is stored, and the way to ask for it. */
export class StorageCare {
  readonly state: ReadonlySignal<StorageState>;
  readonly #state = signal<StorageState>("unknown");
  readonly #promise: StoragePromise;

  constructor(promise: StoragePromise) {
    this.state = this.#state;
    this.#promise = promise;
    void this.#learn(() => promise.isGiven());
  }

  /** Browsers decide by themselves, by habit of use or by asking; a refusal may be asked again. */
  ask(): Promise<void> {
    return this.#learn(() => this.#promise.ask());
  }

  async #learn(tell: StoragePromise["isGiven"]): Promise<void> {
    try {
      const isKept = await tell();
      if (isKept !== undefined) this.#state.value = isKept ? "kept" : "may-go";
    } catch {
      // Where storing is refused altogether, so is this: it stays unknown.
    }
  }
}
