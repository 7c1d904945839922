/** A positive quantity whose logarithm is normal; told by its mean and variance. */
import type { Interval } from "../estimate.ts";
import { normalCdf, normalHalfWidth } from "./normal.ts";

export interface LogNormal {
  /** Mean and standard deviation of the logarithm. */
  mu: number;
  sigma: number;
}

/**
 * The log-normal with a given mean (> 0) and variance (≥ 0), which is how sums of log-normals are
 * put into one again. Source: Fenton 1960, "The sum of log-normal probability distributions",
 * IRE Transactions on Communications Systems 8:57 (from memory).
 */
export function logNormalByMoments(mean: number, variance: number): LogNormal {
  const spread = Math.log1p(variance / mean ** 2);
  return { mu: Math.log(mean) - spread / 2, sigma: Math.sqrt(spread) };
}

/** Probability of being more than `x`. A spread of nought gives 0 or 1. */
export function logNormalAbove(x: number, { mu, sigma }: LogNormal): number {
  if (x <= 0) return 1;
  const distance = mu - Math.log(x);
  if (sigma === 0) return distance > 0 ? 1 : 0;
  return normalCdf(distance / sigma);
}

/** The middle `level` (0 to 1). */
export function logNormalInterval({ mu, sigma }: LogNormal, level: number): Interval {
  const half = normalHalfWidth(level) * sigma;
  return { lower: Math.exp(mu - half), upper: Math.exp(mu + half) };
}
