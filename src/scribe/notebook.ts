import { batch, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { EventBody, EventDraft, Heard, LogEvent, Verdict } from "../log/event.ts";
import { SessionFold } from "../log/fold.ts";
import { newId } from "../log/identity.ts";
import type { Keeper, Kept } from "../log/keeper.ts";
import type { Session } from "../log/session.ts";
import type { LogStore } from "../log/store.ts";

/** An event before its session is known and the store has numbered it. */
export type Note = Omit<EventDraft, "session">;

/** A note of its own id; `heard`, `group` and `at` are left out where there are none. */
export function note(
  body: EventBody,
  verdict: Verdict,
  beside: { heard?: Heard; group?: string; at?: number } = {},
): Note {
  return { id: newId(), verdict, body, ...beside };
}

/** One open session: what is written into it, from here or another tab, shows at once. */
export class Notebook {
  readonly session: ReadonlySignal<Session>;
  /** True once all that was stored before is in, false if it is not to be had for now. */
  readonly ready: Promise<boolean>;
  readonly #keeper: Keeper;
  readonly #id: Signal<string>;
  readonly #session: Signal<Session>;
  #fold: SessionFold;
  /** Resolves once it is sure which session this is. */
  readonly #settled: Promise<void>;
  readonly #take: (events: Iterable<LogEvent>) => void;
  readonly #unsubscribe: () => void;

  /**
   * @param keeper the one above `store`
   * @param settling the id it turns out to have, where that takes a moment to tell; must not fail
   */
  constructor(id: string, store: LogStore, keeper: Keeper, settling?: Promise<string>) {
    this.#id = signal(id);
    this.#keeper = keeper;
    this.#fold = this.#begin(id);
    this.#session = signal(this.#fold.session);
    this.session = this.#session;
    this.#take = (events) => {
      this.#session.value = this.#fold.addAll(events).session;
    };
    // Before reading, so that nothing another tab writes meanwhile is missed.
    this.#unsubscribe = store.subscribe(this.#take);
    const read = () => store.session(this.#id.peek()).then(this.#take);
    this.#settled = settling?.then((id) => this.#settle(id)) ?? Promise.resolve();
    this.ready = keeper.read(() => (settling ? this.#settled.then(read) : read()));
  }

  get id(): string {
    return this.#id.value;
  }

  /** Its id, once it is sure which session this is. Never fails. */
  async settledId(): Promise<string> {
    await this.#settled;
    return this.#id.peek();
  }

  /**
   * Writes what one utterance or one touch did, all of it or nothing; it shows though unsaved. What
   * is written before it is sure which session this is waits for that.
   */
  async write(notes: readonly Note[]): Promise<Kept> {
    const session = await this.settledId();
    const kept = await this.#keeper.append(notes.map((one) => ({ ...one, session })));
    this.#take(kept.events);
    return kept;
  }

  #settle(id: string): void {
    if (id === this.#id.peek()) return;
    this.#fold = this.#begin(id);
    batch(() => {
      this.#id.value = id;
      this.#session.value = this.#fold.session;
    });
  }

  #begin(id: string): SessionFold {
    return new SessionFold(id).addAll(this.#keeper.keeping.unsaved);
  }

  close(): void {
    this.#unsubscribe();
  }
}
