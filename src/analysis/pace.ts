/** Where the bag is heading by the end, and what a target still asks for. */
import type { Session } from "../log/session.ts";
import { fishedStretches, lengthOf } from "./effort/stretches.ts";
import { type Estimate, FEWEST_EVENTS } from "./estimate.ts";
import { countMoments } from "./rates/gamma-poisson.ts";
import { Running } from "./running.ts";
import { MS_PER_HOUR } from "./units.ts";
import type { Bias } from "./weights/bias.ts";
import type { Load } from "./weights/loads.ts";
import { chanceMassAbove, massEstimate, massOf } from "./weights/total.ts";
import type { Typical } from "./weights/typical.ts";

export interface Needed {
  /** Grams per hour from now; Infinity when time is up and weight is short. */
  gramsPerHour: number;
  /** The same in typical fish; undefined while none was weighed. */
  fishPerHour: number | undefined;
  /** Chance of reaching the target at the session's pace; undefined while that does not tell. */
  chance: number | undefined;
}

export interface Pace {
  hoursLeft: number;
  /** Grams now, and at the end if the session goes on as it went. */
  now: Estimate;
  final: Estimate;
  needed?: Needed;
}

/** Shape added to a count by Jeffreys' prior for a Poisson rate. */
const JEFFREYS = 0.5;

/**
 * What the time left may add, as spoken: a count that follows the posterior predictive of the rate,
 * times weights whose mean is itself only known from the fish there were.
 * Source: moments of a compound sum; Bayesian Data Analysis, 3rd ed., §2.6 for the count.
 */
export function futureLoad(
  count: number,
  hours: number,
  hoursLeft: number,
  { meanG, variance, fish }: Typical,
): Load {
  const coming = countMoments(hoursLeft, { shape: count + JEFFREYS, rate: hours });
  const ofMean = ((coming.mean ** 2 + coming.variance) * variance) / fish;
  return {
    net: 0,
    spokenG: coming.mean * meanG,
    variance: coming.mean * variance + coming.variance * meanG ** 2 + ofMean,
    fish: 0,
    unknown: 0,
  };
}

/**
 * The pace of a session at `now` (milliseconds since the epoch). Needs the plan's end, fished time
 * and `FEWEST_EVENTS` fish of known weight to name a final bag; before that the limits reach from
 * the present bag to Infinity. `needed` is there if the plan has a target. `sums` are the session's, where
 * they are at hand.
 */
export function paceOf(
  session: Session,
  now: number,
  bias: Bias,
  sums = Running.over(session),
): Pace {
  const { loads, typical } = sums;
  const mass = massOf(loads, bias);
  const present = massEstimate(mass);
  const { endsAt, targetG } = session.plan;
  const hours = lengthOf(fishedStretches(session, now)) / MS_PER_HOUR;
  const hoursLeft =
    session.state === "ended" ? 0 : Math.max(0, (endsAt ?? now) - now) / MS_PER_HOUR;
  const enough =
    typeof endsAt === "number" && typical && typical.fish >= FEWEST_EVENTS && hours > 0;
  const end = enough
    ? massOf([...loads, futureLoad(session.count, hours, hoursLeft, typical)], bias)
    : undefined;
  const final: Estimate = end
    ? massEstimate(end)
    : { tells: false, lower: present.lower, upper: Number.POSITIVE_INFINITY };
  if (typeof targetG !== "number") return { hoursLeft, now: present, final };
  const short = Math.max(0, targetG - mass.middleG);
  const gramsPerHour = short === 0 ? 0 : short / hoursLeft;
  const needed = {
    gramsPerHour,
    fishPerHour: typical && gramsPerHour / typical.meanG,
    chance: end && chanceMassAbove(targetG, end),
  };
  return { hoursLeft, now: present, final, needed };
}
