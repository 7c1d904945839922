/** A rate from a count of events: the exact limits of Garwood. */
import { gammaQuantile } from "../distributions/gamma.ts";
import { type Estimate, estimate, FEWEST_EVENTS, type Interval, LEVEL } from "../estimate.ts";

/**
 * Exact limits for the mean of a Poisson count (a whole number, ≥ 0), with half of what `level`
 * leaves on either side. None seen gives 0 below.
 * Source: Garwood 1936, "Fiducial limits for the Poisson distribution", Biometrika 28:437.
 */
export function garwood(count: number, level = LEVEL): Interval {
  const tail = (1 - level) / 2;
  return {
    lower: count === 0 ? 0 : gammaQuantile(tail, count, 1),
    upper: gammaQuantile(1 - tail, count + 1, 1),
  };
}

/**
 * Events per unit of exposure (hours, drops), with exact limits. Needs an exposure and
 * `FEWEST_EVENTS` events to name a value; without exposure anything from 0 up is possible.
 */
export function poissonRate(count: number, exposure: number, level = LEVEL): Estimate {
  if (exposure <= 0) return { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
  const { lower, upper } = garwood(count, level);
  return estimate(count >= FEWEST_EVENTS, count / exposure, {
    lower: lower / exposure,
    upper: upper / exposure,
  });
}
