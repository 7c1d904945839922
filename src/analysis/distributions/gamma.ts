/**
 * The gamma distribution by shape and rate (mean shape / rate), from stdlib. Every limit for a
 * Poisson count comes from here: 2 × rate × x follows chi-square with 2 × shape degrees of freedom.
 */
import cdf from "@stdlib/stats-base-dists-gamma-cdf";
import quantile from "@stdlib/stats-base-dists-gamma-quantile";
import type { Interval } from "../estimate.ts";

/** Probability of being at most `x`; `shape` ≥ 0 (0 sits on nought), `rate` > 0. */
export const gammaCdf = (x: number, shape: number, rate: number): number => cdf(x, shape, rate);

/** The value that is not passed with probability `p` (0 to 1). */
export const gammaQuantile = (p: number, shape: number, rate: number): number =>
  quantile(p, shape, rate);

/** The middle `level` (0 to 1) of the distribution. */
export function gammaInterval(shape: number, rate: number, level: number): Interval {
  const tail = (1 - level) / 2;
  return { lower: quantile(tail, shape, rate), upper: quantile(1 - tail, shape, rate) };
}
