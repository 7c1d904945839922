import { type ReadonlySignal, signal } from "@preact/signals";
import type { PastSession } from "../analysis/seasons/past.ts";
import type { DigestStore, SessionSpan } from "../log/store.ts";
import type { Digest } from "./season/digest.ts";
import { readDigests } from "./season/digest-keeper.ts";

interface Shelved {
  lastAt: number;
  past: PastSession | undefined;
}

/**
 * What earlier sessions have left, by the digests that are kept of them. They are looked up again
 * only for a session that is new or that something was written into.
 */
export class PastShelf {
  readonly past: ReadonlySignal<readonly PastSession[]>;
  readonly #past = signal<readonly PastSession[]>([]);
  readonly #store: Pick<DigestStore, "digests">;
  readonly #complete: () => Promise<readonly Digest[]>;
  readonly #shelf = new Map<string, Shelved>();
  #reading: Promise<void> = Promise.resolve();

  /** @param complete has the digests made that are missing, and gives all */
  constructor(store: Pick<DigestStore, "digests">, complete: () => Promise<readonly Digest[]>) {
    this.#store = store;
    this.#complete = complete;
    this.past = this.#past;
  }

  /**
   * Takes in what is new among the sessions and drops what is gone. Never fails: what cannot be read
   * is left out until the next time.
   * @param open the session in hand, which is no past yet
   */
  refresh(sessions: readonly SessionSpan[], open: string): Promise<void> {
    this.#reading = this.#reading.then(() => this.#read(sessions, open));
    return this.#reading;
  }

  async #read(sessions: readonly SessionSpan[], open: string): Promise<void> {
    const earlier = sessions.filter(({ id }) => id !== open);
    const fresh = earlier.filter(({ id, lastAt }) => this.#shelf.get(id)?.lastAt !== lastAt);
    try {
      await this.#shelve(fresh);
    } catch {
      // The store tells of its trouble whoever writes next.
    }
    const past = earlier.flatMap(({ id }) => this.#shelf.get(id)?.past ?? []);
    const shown = this.#past.peek();
    const isSame = past.length === shown.length && past.every((one, i) => one === shown[i]);
    if (!isSame) this.#past.value = past;
  }

  async #shelve(fresh: readonly SessionSpan[]): Promise<void> {
    if (fresh.length === 0) return;
    const kept = byId((await readDigests(this.#store)).digests);
    const isWhole = fresh.every(({ id }) => kept.has(id));
    const all = isWhole ? kept : byId(await this.#complete());
    for (const { id, lastAt } of fresh) this.#shelf.set(id, { lastAt, past: all.get(id)?.past });
  }
}

const byId = (digests: readonly Digest[]): ReadonlyMap<string, Digest> =>
  new Map(digests.map((digest) => [digest.id, digest]));
