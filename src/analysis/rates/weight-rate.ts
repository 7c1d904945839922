/** Weight per unit of exposure, where both the number of fish and their weights vary. */
import { gammaQuantile } from "../distributions/gamma.ts";
import { type Estimate, estimate, FEWEST_EVENTS, LEVEL, sum } from "../estimate.ts";
import type { Typical } from "../weights/typical.ts";

/**
 * Grams per unit of exposure from the weights taken in it. The limits are those for a weighted sum
 * of Poisson counts; with all weights equal they are Garwood's. The upper one reckons with one fish
 * more, picked from the `typical` ones (of the session, say) by weight, since it is the heavy ones
 * that move the sum; without any nothing bounds the rate. Needs an exposure and `FEWEST_EVENTS`
 * weights to name a value.
 * Source: Fay & Feuer 1997, "Confidence intervals for directly standardized rates", Statistics in
 * Medicine 16:791 (from memory; held against Garwood and by simulation). Theirs reckons with the
 * heaviest fish of all, with which the limits hold 99 times in 100; a mean one is too light where
 * weights are uneven.
 */
export function weightRate(
  weightsG: readonly number[],
  exposure: number,
  typical: Pick<Typical, "meanG" | "variance"> | undefined,
  level = LEVEL,
): Estimate {
  if (exposure <= 0 || !typical || typical.meanG <= 0)
    return { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
  const moreG = typical.meanG + typical.variance / typical.meanG;
  const total = sum(weightsG);
  const tail = (1 - level) / 2;
  const squares = sum(weightsG.map((weight) => weight ** 2));
  const lower = total === 0 ? 0 : matchedQuantile(tail, total, squares);
  const upper = matchedQuantile(1 - tail, total + moreG, squares + moreG ** 2);
  return estimate(weightsG.length >= FEWEST_EVENTS, total / exposure, {
    lower: lower / exposure,
    upper: upper / exposure,
  });
}

/** A quantile of the gamma distribution with this mean and variance. */
const matchedQuantile = (p: number, mean: number, variance: number): number =>
  gammaQuantile(p, mean ** 2 / variance, mean / variance);
