/** What the mean of a normal quantity may be, and how observations sharpen it. */

import { sum } from "../estimate.ts";

export interface NormalBelief {
  mean: number;
  variance: number;
}

/**
 * The belief after `count` observations that add up to `total`, each with `noise` (variance, > 0)
 * about the true mean: precisions add, means are weighted by them. No observation leaves the prior
 * as it was. Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §2.5.
 */
export function observedTotal(
  prior: NormalBelief,
  count: number,
  total: number,
  noise: number,
): NormalBelief {
  const precision = 1 / prior.variance + count / noise;
  return {
    mean: (prior.mean / prior.variance + total / noise) / precision,
    variance: 1 / precision,
  };
}

/** The same from the observations themselves. */
export const observed = (
  prior: NormalBelief,
  values: readonly number[],
  noise: number,
): NormalBelief => observedTotal(prior, values.length, sum(values), noise);
