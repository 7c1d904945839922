import type { LogEvent } from "./event.ts";
import type { Outbox, Waiting } from "./outbox.ts";

/** An outbox that lasts as long as the page. */
export class MemoryOutbox implements Outbox {
  readonly #eventOf: (id: string) => LogEvent | undefined;
  readonly #places = new Map<number, string>();
  #joined: unknown;
  #last = 0;

  /** @param eventOf finds a stored event */
  constructor(eventOf: (id: string) => LogEvent | undefined) {
    this.#eventOf = eventOf;
  }

  /** Puts stored events in, while the phone is on a board. */
  put(events: readonly string[]): void {
    if (this.#joined === undefined) return;
    for (const event of events) {
      this.#last += 1;
      this.#places.set(this.#last, event);
    }
  }

  async join(membership: unknown, events: readonly string[]): Promise<void> {
    this.#places.clear();
    this.#joined = membership;
    this.put(events);
  }

  async joined(): Promise<unknown> {
    return this.#joined;
  }

  async waiting(most: number): Promise<Waiting[]> {
    return [...this.#places].slice(0, most).map(([place, id]) => {
      const event = this.#eventOf(id);
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
