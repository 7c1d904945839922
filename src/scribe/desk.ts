import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { SteadyClock } from "../log/clock.ts";
import type { LogEvent } from "../log/event.ts";
import { Keeper } from "../log/keeper.ts";
import type { Session } from "../log/session.ts";
import { spansAfter } from "../log/spans.ts";
import type { LogStore, SessionSpan } from "../log/store.ts";
import type { Keeping } from "./news.ts";
import { Notebook } from "./notebook.ts";

export interface DeskOptions {
  store: LogStore;
  /** The one the store has. */
  clock: SteadyClock;
  /** Milliseconds since the epoch, by the same wall. */
  now(): number;
  /** The session to open first. */
  id: string;
  /** The one it turns out to be, where that takes a moment to tell; must not fail. */
  settling?: Promise<string>;
}

/** A store with all that is done on it: one open notebook, the list of sessions, what is unsaved. */
export class Desk {
  readonly store: LogStore;
  readonly keeper: Keeper;
  readonly now: () => number;
  readonly notebook: ReadonlySignal<Notebook>;
  readonly session: ReadonlySignal<Session>;
  readonly sessions: ReadonlySignal<readonly SessionSpan[]>;
  readonly keeping: ReadonlySignal<Keeping>;
  readonly #notebook: Signal<Notebook>;
  readonly #sessions = signal<readonly SessionSpan[]>([]);
  readonly #damaged = signal(0);
  /** Events that the list does not know of yet. */
  #fresh: LogEvent[] = [];
  #isListStale = true;

  constructor({ store, clock, now, id, settling }: DeskOptions) {
    this.store = store;
    this.now = now;
    const keeper = new Keeper(store, clock);
    this.keeper = keeper;
    const notebook = signal(new Notebook(id, store, keeper, settling));
    this.#notebook = notebook;
    this.notebook = notebook;
    this.session = computed(() => notebook.value.session.value);
    this.sessions = this.#sessions;
    const unsaved = signal(keeper.keeping);
    keeper.subscribe((keeping) => {
      unsaved.value = keeping;
    });
    this.keeping = computed(() => ({
      unsaved: unsaved.value.unsaved.length,
      ...(unsaved.value.trouble && { trouble: unsaved.value.trouble.message }),
      damaged: this.#damaged.value,
    }));
    store.subscribe((events) => {
      // One by one: a season taken in is more than a call takes arguments.
      for (const event of events) this.#fresh.push(event);
    });
    store.subscribeRemovals((id) => {
      this.#isListStale = true;
      this.#fresh = this.#fresh.filter(({ session }) => session !== id);
    });
  }

  open(id: string): void {
    this.#notebook.value.close();
    this.#notebook.value = new Notebook(id, this.store, this.keeper);
  }

  /**
   * Brings the list of sessions up to date if anything was written since. Never fails. The store is
   * asked for all of them only where that can't be told from what was written: with a long log it
   * takes a while, and what is said meanwhile would have to wait to be stored.
   */
  async refresh(): Promise<void> {
    if (!this.#isListStale && this.#fresh.length === 0) return;
    const isStale = this.#isListStale;
    this.#isListStale = false;
    try {
      const known = isStale ? await this.store.sessions() : this.#sessions.peek();
      this.#sessions.value = spansAfter(known, this.#fresh.splice(0));
      this.#damaged.value = (await this.store.damaged()).length;
    } catch {
      // Whoever writes next is told what is wrong; the old list stands until it can be read.
      this.#isListStale = isStale;
    }
  }
}
