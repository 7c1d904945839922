/** What was said and confirmed over all lives, held against what is on the disk. */
import type { LogEvent } from "../../../src/log/event.ts";
import type { Phrase } from "./phrases.ts";

export class Account {
  readonly said: Phrase[] = [];
  readonly confirmed: Phrase[] = [];
  readonly faults = new Set<string>();
  /** Of what was said but never confirmed, how much was stored all the same. */
  unconfirmedFound = 0;

  /** Holds all that was confirmed so far against the events that are stored. */
  check(events: readonly LogEvent[]): void {
    const found = new Map<string, number>();
    for (const { heard } of events) {
      if (heard) found.set(heard.text, (found.get(heard.text) ?? 0) + 1);
    }
    const confirmed = new Set(this.confirmed);
    this.unconfirmedFound = 0;
    for (const phrase of this.said) {
      const count = found.get(phrase.text) ?? 0;
      found.delete(phrase.text);
      if (count === 0 && confirmed.has(phrase)) this.#fault(`confirmed and lost: ${phrase.text}`);
      if (count > 0 && count < phrase.events) this.#fault(`stored by half: ${phrase.text}`);
      if (count > phrase.events) this.#fault(`stored twice: ${phrase.text}`);
      if (count > 0 && !confirmed.has(phrase)) this.unconfirmedFound += 1;
    }
    for (const text of found.keys()) this.#fault(`stored and never said: ${text}`);
    this.#checkNumbers(events);
  }

  /** The device's numbers have neither gap nor double, and all is one session. */
  #checkNumbers(events: readonly LogEvent[]): void {
    const numbers = events.map(({ seq }) => seq).sort((a, b) => a - b);
    const odd = numbers.find((number, place) => number !== place + 1);
    if (odd !== undefined) this.#fault(`the row of numbers breaks at ${odd}`);
    const devices = new Set(events.map(({ device }) => device)).size;
    if (devices > 1) this.#fault(`one device has ${devices} names`);
    const sessions = new Set(events.map(({ session }) => session)).size;
    if (sessions > 1) this.#fault(`one session became ${sessions}`);
  }

  #fault(words: string): void {
    this.faults.add(words);
  }
}
