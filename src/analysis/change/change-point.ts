/** A single change in a Poisson rate: whether, when, and from what to what. */
import gammaln from "@stdlib/math-base-special-gammaln";
import { gammaInterval } from "../distributions/gamma.ts";
import { FEWEST_EVENTS, type Interval, LEVEL } from "../estimate.ts";
import { chanceFaster, type RateBelief, updated, weakPrior } from "../rates/gamma-poisson.ts";

/** So many events (whole, ≥ 0) in so much exposure (> 0); bins follow each other in time. */
export interface Bin {
  count: number;
  exposure: number;
}

export interface Rate extends Interval {
  value: number;
}

export interface ChangePoint {
  tells: true;
  /** Chance that there was a change at all, if that was an even bet beforehand. */
  chance: number;
  /** For each bin but the last, the chance that the change came right after it, given one came. */
  posterior: readonly number[];
  /** The bin after which it most likely came. */
  mode: number;
  /** Chance that the rate went down, given a change. */
  chanceSlower: number;
  /** Rates before and after it, wherever it came, per unit of exposure. */
  before: Rate;
  after: Rate;
}

export type Change = ChangePoint | { tells: false };

/** log of the marginal likelihood of a count, less what is the same for every way of cutting. */
const logMarginal = (prior: RateBelief, { shape, rate }: RateBelief): number =>
  prior.shape * Math.log(prior.rate) -
  gammaln(prior.shape) +
  gammaln(shape) -
  shape * Math.log(rate);

/**
 * A rate believed in as many ways as there are places for the change: their mean, with the limits of
 * the gamma distribution that has the mixture's mean and variance. Limits at the likeliest place
 * alone would be too tight, as that place is where chance has parted the counts the most.
 */
function rateOf(beliefs: readonly RateBelief[], weights: readonly number[]): Rate {
  let [mean, squares] = [0, 0];
  for (const [place, { shape, rate }] of beliefs.entries()) {
    const weight = weights[place] ?? 0;
    mean += (weight * shape) / rate;
    squares += (weight * shape * (shape + 1)) / rate ** 2;
  }
  const variance = squares - mean ** 2;
  return { value: mean, ...gammaInterval(mean ** 2 / variance, mean / variance, LEVEL) };
}

/**
 * The posterior of one change point with conjugate gamma priors worth one event, every bin's end
 * being as likely beforehand. Needs two bins and `FEWEST_EVENTS` events. Costs one pass over the bins.
 * Source: Raftery & Akman 1986, "Bayesian analysis of a Poisson process with a change-point",
 * Biometrika 73:85.
 */
export function changePoint(bins: readonly Bin[], even = 0.5): Change {
  const total = bins.reduce((all, { count }) => all + count, 0);
  const exposure = bins.reduce((all, bin) => all + bin.exposure, 0);
  if (bins.length < 2 || total < FEWEST_EVENTS || exposure <= 0) return { tells: false };
  const prior = weakPrior(total, exposure);
  const cuts = cutsOf(bins, prior, total, exposure);
  const logs = cuts.map(
    ({ before, after }) => logMarginal(prior, before) + logMarginal(prior, after),
  );
  const highest = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - highest));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const posterior = weights.map((weight) => weight / sum);
  const unchanged = logMarginal(prior, updated(prior, total, exposure));
  const odds = (even / (1 - even)) * Math.exp(highest - unchanged) * (sum / cuts.length);
  return {
    tells: true,
    chance: odds === Number.POSITIVE_INFINITY ? 1 : odds / (1 + odds),
    posterior,
    mode: weights.indexOf(1),
    chanceSlower: cuts.reduce(
      (chance, cut, place) =>
        chance + (posterior[place] ?? 0) * chanceFaster(cut.before, cut.after),
      0,
    ),
    before: rateOf(
      cuts.map(({ before }) => before),
      posterior,
    ),
    after: rateOf(
      cuts.map(({ after }) => after),
      posterior,
    ),
  };
}

interface Cut {
  before: RateBelief;
  after: RateBelief;
}

/** What would be believed of both sides, for a change after each bin but the last. */
function cutsOf(bins: readonly Bin[], prior: RateBelief, total: number, exposure: number): Cut[] {
  let count = 0;
  let passed = 0;
  return bins.slice(0, -1).map((bin) => {
    count += bin.count;
    passed += bin.exposure;
    return {
      before: updated(prior, count, passed),
      after: updated(prior, total - count, exposure - passed),
    };
  });
}
