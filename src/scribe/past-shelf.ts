import { type ReadonlySignal, signal } from "@preact/signals";
import { type PastSession, pastOf } from "../analysis/seasons/past.ts";
import { foldSession } from "../log/fold.ts";
import type { LogStore, SessionSpan } from "../log/store.ts";

interface Shelved {
  lastAt: number;
  past: PastSession | undefined;
}

/**
 * What earlier sessions have left. Each is read once, and again only after something was written
 * into it; nothing of it is stored, as it follows from the log.
 */
export class PastShelf {
  readonly past: ReadonlySignal<readonly PastSession[]>;
  readonly #past = signal<readonly PastSession[]>([]);
  readonly #store: Pick<LogStore, "session">;
  readonly #shelf = new Map<string, Shelved>();
  #reading: Promise<void> = Promise.resolve();

  constructor(store: Pick<LogStore, "session">) {
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
    for (const span of earlier) {
      if (this.#shelf.get(span.id)?.lastAt === span.lastAt) continue;
      try {
        const events = await this.#store.session(span.id);
        const past = pastOf(foldSession(span.id, events), span.lastAt);
        this.#shelf.set(span.id, { lastAt: span.lastAt, past });
      } catch {
        // The store tells of its trouble whoever writes next.
      }
    }
    const past = earlier.flatMap(({ id }) => this.#shelf.get(id)?.past ?? []);
    const shown = this.#past.peek();
    const isSame = past.length === shown.length && past.every((one, i) => one === shown[i]);
    if (!isSame) this.#past.value = past;
  }
}
