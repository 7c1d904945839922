/** The rate now against the rest of the session. */
import type { Session } from "../log/session.ts";
import { fishedStretches, fishedUpTo, lengthOf } from "./effort/stretches.ts";
import { type Estimate, FEWEST_EVENTS } from "./estimate.ts";
import { chanceFaster, priorAt, updated } from "./rates/gamma-poisson.ts";
import { poissonRate } from "./rates/garwood.ts";
import { MS_PER_HOUR, MS_PER_MINUTE } from "./units.ts";

export interface CurrentRate {
  /** Fish per hour fished: in the window, before it, and over the whole session. */
  recent: Estimate;
  earlier: Estimate;
  session: Estimate;
  /** Fish taken in the window. */
  recentFish: number;
  /** Chance that the true rate is higher now than before. */
  chanceFaster: number;
  verdict: "faster" | "slower" | "alike" | "too-few";
}

export const WINDOW_MS = 30 * MS_PER_MINUTE;

/** The chance from which a difference is called one; our own choice. */
const SURE = 0.9;

/**
 * Fish that the belief in one common pace is worth: half an hour is taken to differ from what came
 * before by about half either way (the standard deviation of ln of two such rates' ratio is 0.52). A
 * belief worth one fish takes tenfold differences for likely and is too bold by ten in a hundred (by
 * simulation), the more so as a turn mostly lies within one of the two spans.
 */
const ALIKE_WORTH = 8;

/**
 * Fish per hour over the last `WINDOW_MS` of fished time (pauses out) against what came before it.
 * Needs fished time on either side and `FEWEST_EVENTS` fish in all; otherwise it is too few to tell
 * and the chance is one half. `now` in milliseconds since the epoch.
 */
export function currentRate(session: Session, now: number): CurrentRate {
  const stretches = fishedStretches(session, now);
  const total = lengthOf(stretches);
  const recentHours = Math.min(total, WINDOW_MS) / MS_PER_HOUR;
  const earlierHours = Math.max(0, total - WINDOW_MS) / MS_PER_HOUR;
  let [recentFish, earlierFish] = [0, 0];
  for (const { at, statement } of session.entries) {
    if (statement.kind !== "fish") continue;
    const count = statement.count ?? 1;
    if (fishedUpTo(stretches, at) > total - WINDOW_MS) recentFish += count;
    else earlierFish += count;
  }
  const fish = recentFish + earlierFish;
  const enough = earlierHours > 0 && fish >= FEWEST_EVENTS;
  const prior = priorAt(fish, recentHours + earlierHours, ALIKE_WORTH);
  const faster = enough
    ? chanceFaster(
        updated(prior, recentFish, recentHours),
        updated(prior, earlierFish, earlierHours),
      )
    : 0.5;
  return {
    recent: poissonRate(recentFish, recentHours),
    earlier: poissonRate(earlierFish, earlierHours),
    session: poissonRate(fish, recentHours + earlierHours),
    recentFish,
    chanceFaster: faster,
    verdict: enough ? verdictOn(faster) : "too-few",
  };
}

const verdictOn = (faster: number) =>
  faster >= SURE ? "faster" : faster <= 1 - SURE ? "slower" : "alike";
