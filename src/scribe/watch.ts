import type { Session } from "../log/session.ts";
import { type Alarms, limitAlarms, timeAlarms } from "./alarms.ts";
import type { Units } from "./answers/words.ts";

/**
 * Tells what has become true since the last look, each thing once. The first look tells nothing: a
 * page that is loaded again does not repeat what was said before.
 */
export class Watch {
  #known: Alarms | undefined;
  #limits: { session: Session; alarms: Alarms } | undefined;
  #nudged: { since: number; times: number } | undefined;

  /** Limits newly near or passed, a sentence each. @param now milliseconds since the epoch */
  alarms(session: Session, now: number, units: Units): string[] {
    const known = this.#known;
    // Adding up a long session every second would warm the phone for nothing.
    if (this.#limits?.session !== session) {
      this.#limits = { session, alarms: limitAlarms(session, now, units) };
    }
    this.#known = new Map([...this.#limits.alarms, ...timeAlarms(session, now)]);
    if (!known) return [];
    return [...this.#known].flatMap(([about, sentence]) =>
      known.has(about) || sentence === "" ? [] : [sentence],
    );
  }

  /**
   * What to be reminded of, each time its interval has run round while fishing; one that came due
   * in a break is left out.
   */
  nudge({ reminder, state }: Session, now: number): string | undefined {
    if (!reminder) return undefined;
    const { since, everyMs, about } = reminder;
    const times = Math.floor((now - since) / everyMs);
    const last = this.#nudged?.since === since ? this.#nudged.times : undefined;
    this.#nudged = { since, times };
    // One just asked for begins to count at once; one from before a reload goes on from here.
    const isDue = last === undefined ? false : times > last;
    return isDue && state === "fishing" ? (about ?? "Nudge") : undefined;
  }
}
