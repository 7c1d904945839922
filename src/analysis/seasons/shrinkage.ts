/** Rates of many groups, each drawn toward the common one as far as its own events are few. */
import { gammaInterval } from "../distributions/gamma.ts";
import { type Estimate, estimate, FEWEST_EVENTS, LEVEL, sum } from "../estimate.ts";
import { meanOf, type RateBelief, updated, weakPrior } from "../rates/gamma-poisson.ts";
import type { Counted } from "../rates/two-rates.ts";

/**
 * Groups are never taken to differ by less than this share of the common rate: a few groups often
 * look alike by chance, and then limits that believed it would be too tight. Our own choice, with
 * which the limits hold for groups that differ by up to two fifths (by simulation).
 */
const LEAST_SPREAD = 0.4;

/**
 * How rates spread over groups, as a gamma distribution with the common rate for its mean; the
 * moments of the groups' rates, weighted by exposure, less what counting alone scatters. Groups
 * without exposure say nothing; with fewer than two that do, or no event at all, it is a prior
 * worth one event. Some exposure (> 0) is needed in all.
 * Source: Marshall 1991, "Mapping disease and mortality rates using empirical Bayes estimators",
 * Applied Statistics 40:283 (from memory; held by simulation).
 */
export function commonPrior(groups: readonly Counted[]): RateBelief {
  const fished = groups.filter(({ exposure }) => exposure > 0);
  const exposure = sum(fished.map((group) => group.exposure));
  const count = sum(fished.map((group) => group.count));
  if (fished.length < 2 || count === 0) return weakPrior(count, exposure);
  const common = count / exposure;
  const scatter =
    sum(fished.map((group) => group.exposure * (group.count / group.exposure - common) ** 2)) /
    exposure;
  const byCounting = common / (exposure / fished.length);
  const between = Math.max(scatter - byCounting, (LEAST_SPREAD * common) ** 2);
  return { shape: common ** 2 / between, rate: common / between };
}

/** The belief of one group's rate. */
export const shrunk = ({ count, exposure }: Counted, prior: RateBelief): RateBelief =>
  updated(prior, count, exposure);

/**
 * The shrunken rate with its limits; names a value from `FEWEST_EVENTS` events of the group's own.
 * Without exposure anywhere anything from 0 up is possible.
 */
export const shrunkRate = (group: Counted, prior: RateBelief, level = LEVEL): Estimate => {
  const belief = shrunk(group, prior);
  if (belief.rate <= 0) return { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
  const limits = gammaInterval(belief.shape, belief.rate, level);
  return estimate(group.count >= FEWEST_EVENTS, meanOf(belief), limits);
};
