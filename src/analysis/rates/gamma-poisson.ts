/** What a Poisson rate may be after some events, as a gamma distribution; and what follows. */
import negativeBinomialPmf from "@stdlib/stats-base-dists-negative-binomial-pmf";
import { betaCdf } from "../distributions/beta.ts";
import { gammaCdf } from "../distributions/gamma.ts";

/** A gamma distribution of the rate: `shape` events (> 0) in `rate` units of exposure (> 0). */
export interface RateBelief {
  shape: number;
  rate: number;
}

/**
 * The belief after `count` more events (≥ 0) in `exposure` (≥ 0).
 * Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §2.6.
 */
export const updated = (prior: RateBelief, count: number, exposure: number): RateBelief => ({
  shape: prior.shape + count,
  rate: prior.rate + exposure,
});

/**
 * A prior at a common rate, worth as many events at that pace as `worth` (> 0) says; a single one is
 * weak. Where nothing was seen yet the pace counts as one event in all the exposure there is.
 * `exposure` > 0.
 */
export const priorAt = (count: number, exposure: number, worth: number): RateBelief => ({
  shape: worth,
  rate: (worth * exposure) / Math.max(1, count),
});

/** A prior worth a single event at a common rate. `exposure` > 0. */
export const weakPrior = (count: number, exposure: number): RateBelief =>
  priorAt(count, exposure, 1);

/**
 * Fish that the belief in one common pace is worth where set-ups are held against each other: their
 * paces are taken to differ by about three quarters (the standard deviation of ln of two such rates'
 * ratio is 0.75). By simulation chances that start from one fish are too bold by five in a hundred,
 * from four they are right.
 */
const LEVELS_WORTH = 4;

/** The belief from which each of several set-ups starts, at their common pace. `exposure` > 0. */
export const levelPrior = (count: number, exposure: number): RateBelief =>
  priorAt(count, exposure, LEVELS_WORTH);

/** The mean rate, in events per unit of exposure. */
export const meanOf = ({ shape, rate }: RateBelief): number => shape / rate;

/** Chance that the rate is above `bar`. */
export const chanceAbove = (bar: number, { shape, rate }: RateBelief): number =>
  1 - gammaCdf(bar, shape, rate);

/**
 * Chance that the first rate is above the second: the first's share of both, each in its own unit,
 * is beta distributed. Equal beliefs give one half. Source: the gamma-beta relation, Johnson, Kotz
 * & Balakrishnan, Continuous Univariate Distributions, ch. 25 (from memory).
 */
export const chanceFaster = (first: RateBelief, second: RateBelief): number =>
  betaCdf(second.rate / (first.rate + second.rate), second.shape, first.shape);

/**
 * Chance of exactly `count` events in a further `exposure` (≥ 0): negative binomial.
 * Source: Bayesian Data Analysis, 3rd ed., §2.6.
 */
export function chanceOfCount(
  count: number,
  exposure: number,
  { shape, rate }: RateBelief,
): number {
  if (exposure === 0) return count === 0 ? 1 : 0;
  return negativeBinomialPmf(count, shape, rate / (rate + exposure));
}

/** Mean and variance of the number of events in a further `exposure` (≥ 0). */
export function countMoments(
  exposure: number,
  { shape, rate }: RateBelief,
): { mean: number; variance: number } {
  const mean = (shape / rate) * exposure;
  return { mean, variance: mean * (1 + exposure / rate) };
}
