/** What a session tried and what came of it, carried on from entry to entry. */
import type { Trial } from "../../analysis/best.ts";
import { setUpLevel } from "../../analysis/effort/exposure.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import { advance, type Progress } from "../../log/progress.ts";
import type { Entry, Session } from "../../log/session.ts";
import { POOLED_FACTORS, type PooledFactor } from "./view.ts";

/**
 * Nobody fishes for so long without a word: a clock was put right, or yesterday's session not ended.
 * Such hours would bury everybody else's. Our own choice.
 */
const LONGEST_GAP_MS = 12 * MS_PER_HOUR;

interface Tried {
  fishedMs: number;
  fish: number;
}

type ByLevel = Map<string | number, Tried>;

/**
 * Hours and fish by depth, bait and rig. An entry more costs the same however many there are; only a
 * correction, which makes a new list of them, has everything added up again.
 */
export class RunningTrials {
  #entries: Session["entries"] = [];
  #taken = 0;
  #progress: Progress = nothingYet();
  #last: Entry | undefined;
  #levels = emptyLevels();

  /** Goes on to how the session stands now. */
  follow({ entries }: Session): this {
    if (this.#entries !== entries) this.#restart(entries);
    for (; this.#taken < entries.length; this.#taken += 1) {
      const entry = entries[this.#taken];
      if (entry) this.#take(entry);
    }
    return this;
  }

  /** What was tried up to `now`, nothing before a start, by the clock of the phone, milliseconds since the epoch. */
  upTo(now: number): Record<PooledFactor, Trial[]> {
    if (this.#progress.startedAt === undefined) return { depth: [], bait: [], rig: [] };
    const openMs = this.#fishedSince(now);
    const trials = POOLED_FACTORS.map((factor) => {
      const inForce = this.#last && levelOf(factor, this.#last);
      const levels = [...this.#levels[factor]].map(([level, { fishedMs, fish }]) => ({
        ...{ level, fish },
        hours: (fishedMs + (level === inForce ? openMs : 0)) / MS_PER_HOUR,
      }));
      return [factor, levels] as const;
    });
    return Object.fromEntries(trials) as Record<PooledFactor, Trial[]>;
  }

  #restart(entries: Session["entries"]): void {
    this.#entries = entries;
    this.#taken = 0;
    this.#progress = nothingYet();
    this.#last = undefined;
    this.#levels = emptyLevels();
  }

  #take(entry: Entry): void {
    const fishedMs = this.#fishedSince(entry.at);
    const { statement } = entry;
    const fish = statement.kind === "fish" ? (statement.count ?? 1) : 0;
    for (const factor of POOLED_FACTORS) {
      const levels = this.#levels[factor];
      if (this.#last) add(levels, levelOf(factor, this.#last), { fishedMs, fish: 0 });
      add(levels, levelOf(factor, entry), { fishedMs: 0, fish });
    }
    this.#progress = advance(this.#progress, statement, entry.at);
    this.#last = entry;
  }

  /** Between two entries it was fished all the time or not at all: what begins or ends it is an entry. */
  #fishedSince(at: number): number {
    if (this.#progress.state !== "fishing" || !this.#last) return 0;
    const ms = at - this.#last.at;
    return ms < 0 || ms > LONGEST_GAP_MS ? 0 : ms;
  }
}

const nothingYet = (): Progress => ({ state: "ready", pauses: [] });

const emptyLevels = (): Record<PooledFactor, ByLevel> => ({
  depth: new Map(),
  bait: new Map(),
  rig: new Map(),
});

const levelOf = (factor: PooledFactor, { setUp }: Entry) => setUpLevel(factor, setUp);

/** What no set-up named belongs to no level. */
function add(levels: ByLevel, level: ReturnType<typeof levelOf>, { fishedMs, fish }: Tried): void {
  if (level === undefined) return;
  const before = levels.get(level) ?? { fishedMs: 0, fish: 0 };
  levels.set(level, { fishedMs: before.fishedMs + fishedMs, fish: before.fish + fish });
}
