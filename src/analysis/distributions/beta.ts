/** The beta distribution, from stdlib. */
import cdf from "@stdlib/stats-base-dists-beta-cdf";
import quantile from "@stdlib/stats-base-dists-beta-quantile";

/** Probability of being at most `x` (0 to 1); `a` and `b` > 0. */
export const betaCdf = (x: number, a: number, b: number): number => cdf(x, a, b);

/** The value that is not passed with probability `p` (0 to 1); `a` and `b` > 0. */
export const betaQuantile = (p: number, a: number, b: number): number => quantile(p, a, b);
