import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { EarsFiles } from "../speech/offline/ears-files.ts";
import type { EarsThere } from "../speech/ranking.ts";
import { listeningWords } from "../words/listening.ts";

/** How it stands with the files of the ears inside the app; sizes in bytes. */
export type EarsKept =
  | { is: "impossible" }
  /** `isPart`: some of it is kept from an attempt that broke off. */
  | { is: "absent"; bytes?: number; isPart?: boolean; trouble?: string }
  | { is: "fetching"; loaded: number; total: number }
  /** `startsAlone`: the app itself starts without a network as well; absent while that is looked up. */
  | { is: "kept"; startsAlone?: boolean };

export interface EarsCareOptions {
  files: Pick<EarsFiles, "size" | "areKept" | "keep" | "remove">;
  /** Whether this browser can run the ears at all. */
  isPossible: boolean;
  /** Asks the browser not to clear away what is kept. */
  askToKeep(): Promise<unknown>;
  /** Whether the app's own files are kept, after waiting a while for it. */
  isAppKept(): Promise<boolean>;
}

/** Which ears there are. Fetches, keeps and removes what those inside the app need. */
export class EarsCare {
  readonly state: ReadonlySignal<EarsKept>;
  readonly offline: ReadonlySignal<EarsThere["offline"]>;
  /** Set by whoever has looked at what the browser offers. */
  readonly web: Signal<EarsThere["web"]> = signal("none");
  readonly #state;
  readonly #options: EarsCareOptions;

  constructor(options: EarsCareOptions) {
    this.#options = options;
    this.#state = signal<EarsKept>({ is: options.isPossible ? "absent" : "impossible" });
    this.state = this.#state;
    this.offline = computed(() => {
      const { is } = this.#state.value;
      return is === "fetching" ? "absent" : is;
    });
    if (options.isPossible) void this.#look();
  }

  /** Learns how much there is to fetch; without a network it stays unknown. */
  async measure(): Promise<void> {
    if (this.#state.value.is !== "absent") return;
    const bytes = await this.#options.files.size().catch(() => undefined);
    const state = this.#state.value;
    if (state.is === "absent" && bytes !== undefined) this.#state.value = { ...state, bytes };
  }

  /** Fetches and keeps what is missing. Never fails: `state` tells what went wrong. */
  async getReady(): Promise<void> {
    const before = this.#state.value;
    if (before.is !== "absent") return;
    let [loaded, total] = [0, before.bytes ?? 0];
    this.#state.value = { is: "fetching", loaded, total };
    try {
      void this.#options.askToKeep();
      await this.#options.files.keep((progress) => {
        ({ loaded, total } = progress);
        this.#state.value = { is: "fetching", loaded, total };
      });
      await this.#becomeKept();
    } catch (cause) {
      const trouble = troubleOf(cause as Error, loaded, total);
      const bytes = total > 0 ? { bytes: total } : {};
      this.#state.value = { is: "absent", ...bytes, isPart: loaded > 0, trouble };
    }
  }

  async remove(): Promise<void> {
    if (this.#state.value.is !== "kept") return;
    await this.#options.files.remove();
    this.#state.value = { is: "absent" };
    await this.measure();
  }

  async #look(): Promise<void> {
    const isKept = await this.#options.files.areKept().catch(() => false);
    if (!isKept || this.#state.value.is !== "absent") return;
    await this.#becomeKept();
    // A newer version of the app may have brought newer ears; without a network the old ones serve.
    await this.#options.files.keep(() => {}).catch(() => {});
  }

  async #becomeKept(): Promise<void> {
    this.#state.value = { is: "kept" };
    const startsAlone = await this.#options.isAppKept();
    if (this.#state.value.is === "kept") this.#state.value = { is: "kept", startsAlone };
  }
}

function troubleOf({ name }: Error, loaded: number, total: number): string {
  const { trouble } = listeningWords;
  if (name === "QuotaExceededError") return trouble.full(total);
  // `fetch` throws a TypeError where nothing answers, `EarsFiles` an Error for a wrong answer.
  return name === "TypeError" || name === "Error" ? trouble.broken(loaded) : trouble.failed;
}
