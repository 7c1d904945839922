import type { LogEvent } from "./event.ts";
import type { Outbox, Waiting } from "./outbox.ts";

/** An outbox that lasts as long as the page. */
export class MemoryOutbox implements Outbox {
  readonly #events: ReadonlyMap<string, LogEvent>;
  readonly #places = new Map<number, string>();
  #joined: unknown;
  #last = 0;

  /** @param events what is stored, by id */
  constructor(events: ReadonlyMap<string, LogEvent>) {
    this.#events = events;
  }

  /** Puts stored events in, while the phone is on a board. */
  put(events: readonly string[]): void {
    if (this.#joined === undefined) return;
    for (const event of events) {
      this.#last += 1;
      this.#places.set(this.#last, event);
    }
  }

  async join(membership: unknown, session: string): Promise<void> {
    this.#places.clear();
    this.#joined = membership;
    const events = [...this.#events.values()].filter((event) => event.session === session);
    this.put(events.map(({ id }) => id).sort());
  }

  async joined(): Promise<unknown> {
    return this.#joined;
  }

  async waiting(most: number): Promise<Waiting[]> {
    return [...this.#places].slice(0, most).map(([place, id]) => {
      const event = this.#events.get(id);
      return event ? { place, event } : { place };
    });
  }

  async count(): Promise<number> {
    return this.#places.size;
  }

  async done(places: readonly number[]): Promise<void> {
    for (const place of places) this.#places.delete(place);
  }

  async leave(): Promise<void> {
    this.#joined = undefined;
    this.#places.clear();
  }
}
