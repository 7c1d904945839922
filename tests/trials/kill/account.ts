/** What was said and confirmed over all lives, held against what is on the disk. */
import type { LogEvent } from "../../../src/log/event.ts";
import type { Phrase } from "./phrases.ts";

/** The session that the last entry lies in, and how many fish there are in it. */
export interface LastEntry {
  session: string;
  fish: number;
}

export class Account {
  readonly said: Phrase[] = [];
  readonly confirmed: Phrase[] = [];
  readonly faults = new Set<string>();
  /** Of what was said but never confirmed, how much was stored all the same. */
  unconfirmedFound = 0;
  /** How often another session was begun. */
  begun = 0;
  /** How often the browser found the log damaged and threw it away. */
  thrownAway = 0;
  /** How many restarts were looked at for the session that is open. */
  restarts = 0;
  /** How many sessions had been begun when each was said, by its text. */
  readonly #begunBefore = new Map<string, number>();

  says(phrase: Phrase): void {
    this.said.push(phrase);
    this.#begunBefore.set(phrase.text, this.begun);
  }

  /** Holds all that was confirmed so far against the events that are stored. */
  check(events: readonly LogEvent[]): void {
    const found = new Map<string, number>();
    for (const { heard } of events.filter(isSaid)) {
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
    this.#checkSessions(events);
  }

  /**
   * Where the last entry lies; undefined if there is none since another session was begun. Each
   * phrase is one fish.
   */
  lastEntry(events: readonly LogEvent[]): LastEntry | undefined {
    const entries = events.filter(isSaid).sort((a, b) => a.seq - b.seq);
    const last = entries.at(-1);
    if (!last || this.#begunBeforeEvent(last) !== this.begun) return undefined;
    const here = entries.filter(({ session }) => session === last.session);
    return { session: last.session, fish: new Set(here.map(({ heard }) => heard?.text)).size };
  }

  /** The device's numbers have neither gap nor double. */
  #checkNumbers(events: readonly LogEvent[]): void {
    const numbers = events.map(({ seq }) => seq).sort((a, b) => a - b);
    const odd = numbers.find((number, place) => number !== place + 1);
    if (odd !== undefined) this.#fault(`the row of numbers breaks at ${odd}`);
    const devices = new Set(events.map(({ device }) => device)).size;
    if (devices > 1) this.#fault(`one device has ${devices} names`);
  }

  /** All that was said without beginning another session in between is in one. */
  #checkSessions(events: readonly LogEvent[]): void {
    const sessions = new Map<number, Set<string>>();
    for (const event of events.filter(isSaid)) {
      const begun = this.#begunBeforeEvent(event) ?? 0;
      sessions.set(begun, (sessions.get(begun) ?? new Set()).add(event.session));
    }
    for (const [begun, { size }] of sessions) {
      if (size > 1) this.#fault(`session ${begun} became ${size}`);
    }
  }

  #begunBeforeEvent({ heard }: LogEvent): number | undefined {
    return this.#begunBefore.get(heard?.text ?? "");
  }

  #fault(words: string): void {
    this.faults.add(words);
  }
}

/** What is typed or touched is there for the trial's sake. */
const isSaid = ({ heard }: LogEvent) => heard?.by === "web";
