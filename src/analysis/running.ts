/** Sums over a session that are carried on from entry to entry. */
import type { Entry, Session } from "../log/session.ts";
import { type Mood, moodAt, WATCH_START, type Watch, watchAfter } from "./change/watch.ts";
import { fishedStretches, fishedUpTo, lengthOf } from "./effort/stretches.ts";
import { addBait, type BaitUse } from "./rules/bait.ts";
import { type Bias, biasFrom, type WeighedNet, weighedIn } from "./weights/bias.ts";
import { CatchTally } from "./weights/catch-tally.ts";
import { type Load, loadsFrom, typicalIn } from "./weights/loads.ts";
import type { Typical } from "./weights/typical.ts";

/**
 * What the live screen and the warnings work from. Following a session costs as much as it has new
 * entries; only after a correction, which makes a new list of them, is everything added up again.
 */
export class Running {
  #session: Session | undefined;
  #taken = 0;
  #catch = new CatchTally();
  #baits = new Map<string, BaitUse>();
  #watch: Watch = WATCH_START;
  #fedAt: number | undefined;

  /** The sums over the whole of a session. */
  static over(session: Session): Running {
    return new Running().follow(session);
  }

  /** Goes on to how a session stands now; another session, or a corrected one, is begun anew. */
  follow(session: Session): this {
    if (this.#session?.entries !== session.entries) this.#restart();
    this.#session = session;
    for (const { entries } = session; this.#taken < entries.length; this.#taken += 1) {
      const entry = entries[this.#taken];
      if (entry) this.#take(entry, session);
    }
    return this;
  }

  /** Grams by net in the session's order, as spoken and filled in. */
  get loads(): readonly Load[] {
    return loadsFrom(this.#catch, this.#session?.nets ?? []);
  }

  /** One more fish like those there were; undefined while none was weighed. */
  get typical(): Typical | undefined {
    return typicalIn(this.#catch);
  }

  /** What was fed, by bait. */
  get baits(): ReadonlyMap<string, BaitUse> {
    return this.#baits;
  }

  /** When feed last went in, milliseconds since the epoch. */
  get fedAt(): number | undefined {
    return this.#fedAt;
  }

  /** The watch over the gaps between fish. */
  get watch(): Watch {
    return this.#watch;
  }

  /** How the fishing goes at `now`, milliseconds since the epoch. */
  moodAt(now: number): Mood {
    if (!this.#session) return "too-few";
    return moodAt(this.#watch, lengthOf(fishedStretches(this.#session, now)));
  }

  /** The angler's bias after the nets of earlier sessions, and those of this one that were weighed. */
  biasAfter(past: readonly WeighedNet[]): Bias {
    const id = this.#session?.id ?? "";
    return biasFrom([
      ...past.filter(({ session }) => session !== id),
      ...weighedIn(id, this.loads),
    ]);
  }

  #restart(): void {
    this.#taken = 0;
    this.#catch = new CatchTally();
    this.#baits = new Map();
    this.#watch = WATCH_START;
    this.#fedAt = undefined;
  }

  #take(entry: Entry, session: Session): void {
    this.#catch.add(entry);
    addBait(this.#baits, entry);
    const { statement, at } = entry;
    if (statement.kind === "feed") this.#fedAt = at;
    if (statement.kind !== "fish") return;
    const fishedMs = fishedUpTo(fishedStretches(session, at), at);
    this.#watch = watchAfter(this.#watch, fishedMs, statement.count ?? 1);
  }
}
