import type { Session } from "../log/session.ts";
import { warningWords as say } from "../words/warnings.ts";
import { type Alarms, limitAlarms, paceAlarms, type Sight, timeAlarms } from "./alarms.ts";

/** What the limits follow from: while these are the same things, so are the alarms. */
type Cause = Pick<Sight, "session" | "units" | "warnings" | "bias">;

/**
 * Tells what has become true since the last look, each thing once. The first look tells nothing: a
 * page that is loaded again does not repeat what was said before.
 */
export class Watch {
  #known: Alarms | undefined;
  #limits: { cause: Cause; alarms: Alarms } | undefined;
  #nudged: { since: number; times: number } | undefined;

  /** What is newly so, a sentence each. */
  alarms(sight: Sight): string[] {
    const known = this.#known;
    const { session, sums, now, warnings } = sight;
    this.#known = new Map([
      ...this.#limitsOf(sight),
      ...timeAlarms(session, now, warnings),
      ...(warnings.pace ? paceAlarms(session, sums, now, known ?? new Map()) : []),
    ]);
    if (!known) return [];
    return [...this.#known].flatMap(([about, sentence]) =>
      known.has(about) || sentence === "" ? [] : [sentence],
    );
  }

  /** The limits are looked at once a second, and change only with their cause. */
  #limitsOf(sight: Sight): Alarms {
    const { session, units, warnings, bias } = sight;
    const last = this.#limits?.cause;
    const isSame =
      last?.session === session &&
      last.units === units &&
      last.warnings === warnings &&
      last.bias === bias;
    if (!this.#limits || !isSame)
      this.#limits = { cause: { session, units, warnings, bias }, alarms: limitAlarms(sight) };
    return this.#limits.alarms;
  }

  /**
   * What to be reminded of, each time its interval has run round while fishing; one that came due
   * in a break is left out. A reminder to feed counts from the last feed.
   * @param fedAt when feed last went in; like `now` in milliseconds since the epoch
   */
  nudge({ reminder, state }: Session, now: number, fedAt = 0): string | undefined {
    if (!reminder) return undefined;
    const { everyMs, about } = reminder;
    const since = isOfFeed(about) ? Math.max(reminder.since, fedAt) : reminder.since;
    const times = Math.floor((now - since) / everyMs);
    const last = this.#nudged?.since === since ? this.#nudged.times : undefined;
    this.#nudged = { since, times };
    // One just asked for begins to count at once; one from before a reload goes on from here.
    const isDue = last === undefined ? false : times > last;
    return isDue && state === "fishing" ? (about ?? say.nudge) : undefined;
  }
}

const isOfFeed = (about: string | undefined): boolean =>
  about !== undefined && /\b(feed|bait|pot)/i.test(about);
