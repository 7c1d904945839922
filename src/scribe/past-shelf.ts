import { type ReadonlySignal, signal } from "@preact/signals";
import type { PastSession } from "../analysis/seasons/past.ts";
import type { SessionSpan } from "../log/store.ts";
import type { Digest } from "./season/digest.ts";
import { type DigestedStore, makeDigest, readDigests } from "./season/digest-keeper.ts";

interface Shelved {
  lastAt: number;
  past: PastSession | undefined;
}

/**
 * What earlier sessions have left, by the digests that are kept of them. One without is read once,
 * and again only after something was written into it.
 */
export class PastShelf {
  readonly past: ReadonlySignal<readonly PastSession[]>;
  readonly #past = signal<readonly PastSession[]>([]);
  readonly #store: DigestedStore;
  readonly #shelf = new Map<string, Shelved>();
  #reading: Promise<void> = Promise.resolve();

  constructor(store: DigestedStore) {
    this.#store = store;
    this.past = this.#past;
  }

  /**
   * Reads what is new among the sessions, one after the other, and drops what is gone.
   * Never fails: a session that cannot be read is left out until the next time.
   * @param open the session in hand, which is no past yet
   */
  refresh(sessions: readonly SessionSpan[], open: string): Promise<void> {
    this.#reading = this.#reading.then(() => this.#read(sessions, open));
    return this.#reading;
  }

  async #read(sessions: readonly SessionSpan[], open: string): Promise<void> {
    const earlier = sessions.filter(({ id }) => id !== open);
    const fresh = earlier.filter(({ id, lastAt }) => this.#shelf.get(id)?.lastAt !== lastAt);
    const kept = fresh.length > 0 ? await this.#kept() : NO_DIGESTS;
    for (const { id, lastAt } of fresh) {
      try {
        const digest = kept.get(id) ?? (await makeDigest(this.#store, id));
        this.#shelf.set(id, { lastAt, past: digest?.past });
      } catch {
        // The store tells of its trouble whoever writes next.
      }
    }
    const past = earlier.flatMap(({ id }) => this.#shelf.get(id)?.past ?? []);
    const shown = this.#past.peek();
    const isSame = past.length === shown.length && past.every((one, i) => one === shown[i]);
    if (!isSame) this.#past.value = past;
  }

  async #kept(): Promise<ReadonlyMap<string, Digest>> {
    try {
      const { digests } = await readDigests(this.#store);
      return new Map(digests.map((digest) => [digest.id, digest]));
    } catch {
      return NO_DIGESTS;
    }
  }
}

const NO_DIGESTS: ReadonlyMap<string, Digest> = new Map();
