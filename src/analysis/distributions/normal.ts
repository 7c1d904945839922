/** The standard normal distribution, from stdlib, and what follows from it. */
import cdf from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";

/** Probability of being at most `z`. */
export const normalCdf = (z: number): number => cdf(z, 0, 1);

/** The value that is not passed with probability `p` (0 to 1). */
export const normalQuantile = (p: number): number => quantile(p, 0, 1);

/** Half the width, in standard deviations, of the middle `level` (0 to 1). */
export const normalHalfWidth = (level: number): number => normalQuantile(1 - (1 - level) / 2);

/** Probability of chi-square with one degree of freedom being `x` or more: a squared normal. */
export const chiSquareTail1 = (x: number): number => 2 * normalCdf(-Math.sqrt(x));
