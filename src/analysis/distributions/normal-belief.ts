/** What the mean of a normal quantity may be, and how observations sharpen it. */

export interface NormalBelief {
  mean: number;
  variance: number;
}

/**
 * The belief after some observations, each with `noise` (variance, > 0) about the true mean:
 * precisions add, means are weighted by them. No observation leaves the prior as it was.
 * Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §2.5.
 */
export function observed(
  prior: NormalBelief,
  values: readonly number[],
  noise: number,
): NormalBelief {
  const precision = 1 / prior.variance + values.length / noise;
  const total = values.reduce((sum, value) => sum + value, 0);
  return {
    mean: (prior.mean / prior.variance + total / noise) / precision,
    variance: 1 / precision,
  };
}
