import { type ReadonlySignal, signal } from "@preact/signals";
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
  readonly id: string;
  readonly session: ReadonlySignal<Session>;
  /** Resolves once all that was stored before is in, or is not to be had for now. */
  readonly ready: Promise<void>;
  readonly #keeper: Keeper;
  readonly #fold: SessionFold;
  readonly #take: (events: Iterable<LogEvent>) => void;
  readonly #unsubscribe: () => void;

  /** @param keeper the one above `store` */
  constructor(id: string, store: LogStore, keeper: Keeper) {
    this.id = id;
    this.#keeper = keeper;
    this.#fold = new SessionFold(id).addAll(keeper.keeping.unsaved);
    const session = signal(this.#fold.session);
    this.session = session;
    this.#take = (events) => {
      session.value = this.#fold.addAll(events).session;
    };
    // Before reading, so that nothing another tab writes meanwhile is missed.
    this.#unsubscribe = store.subscribe(this.#take);
    this.ready = keeper.read(store.session(id).then(this.#take));
  }

  /** Writes what one utterance or one touch did, all of it or nothing; it shows though unsaved. */
  async write(notes: readonly Note[]): Promise<Kept> {
    const kept = await this.#keeper.append(notes.map((one) => ({ ...one, session: this.id })));
    this.#take(kept.events);
    return kept;
  }

  close(): void {
    this.#unsubscribe();
  }
}
