/** Weight per unit of exposure, where both the number of fish and their weights vary. */
import { gammaQuantile } from "../distributions/gamma.ts";
import { type Estimate, estimate, FEWEST_EVENTS, LEVEL, sum } from "../estimate.ts";

/**
 * Grams per unit of exposure from the weights taken in it. The limits are those for a weighted sum
 * of Poisson counts; with all weights equal they are Garwood's. `heaviestG` is the heaviest fish that
 * one more could be (the heaviest of the session will do); 0 if no weight is known, and then
 * nothing bounds the rate. Needs an exposure and `FEWEST_EVENTS` weights to name a value.
 * Source: Fay & Feuer 1997, "Confidence intervals for directly standardized rates", Statistics in
 * Medicine 16:791 (from memory; held against Garwood and by simulation).
 */
export function weightRate(
  weightsG: readonly number[],
  exposure: number,
  heaviestG: number,
  level = LEVEL,
): Estimate {
  const total = sum(weightsG);
  const largest = weightsG.reduce((most, weight) => Math.max(most, weight), heaviestG);
  if (exposure <= 0 || largest <= 0) {
    return { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
  }
  const tail = (1 - level) / 2;
  const squares = sum(weightsG.map((weight) => weight ** 2));
  const lower = total === 0 ? 0 : matchedQuantile(tail, total, squares);
  const upper = matchedQuantile(1 - tail, total + largest, squares + largest ** 2);
  return estimate(weightsG.length >= FEWEST_EVENTS, total / exposure, {
    lower: lower / exposure,
    upper: upper / exposure,
  });
}

/** A quantile of the gamma distribution with this mean and variance. */
const matchedQuantile = (p: number, mean: number, variance: number): number =>
  gammaQuantile(p, mean ** 2 / variance, mean / variance);
