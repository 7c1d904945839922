import type { Session } from "../log/session.ts";
import { type Alarms, alarmsOf } from "./alarms.ts";
import type { Units } from "./answers/words.ts";

/**
 * Tells what has become true since the last look, each thing once. The first look tells nothing: a
 * page that is loaded again does not repeat what was said before.
 */
export class Watch {
  #known: Alarms | undefined;
  #nudged: { since: number; times: number } | undefined;

  /** Limits newly near or passed, a sentence each. @param now milliseconds since the epoch */
  alarms(session: Session, now: number, units: Units): string[] {
    const known = this.#known;
    this.#known = alarmsOf(session, now, units);
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
