/** Two Poisson rates held against each other, exactly. */
import binomialPmf from "@stdlib/stats-base-dists-binomial-pmf";
import { betaQuantile } from "../distributions/beta.ts";
import { type Estimate, estimate, FEWEST_EVENTS, LEVEL } from "../estimate.ts";

/** So many events (a whole number, ≥ 0) in so much exposure (> 0, the same unit on both sides). */
export interface Counted {
  count: number;
  exposure: number;
}

/** The share of all events that falls to the first if the rates are equal; any, without exposure. */
const fairShare = (first: Counted, second: Counted): number =>
  first.exposure / (first.exposure + second.exposure || 1);

const isUntried = (first: Counted, second: Counted): boolean =>
  first.exposure <= 0 || second.exposure <= 0;

/**
 * Two-sided p of equal rates: given their sum, the first count is binomial; every split no likelier
 * than the one seen counts against equality. Nothing seen at all, or a side without exposure, gives 1.
 * Source: R `poisson.test`; Przyborowski & Wilenski 1940, Biometrika 31:313.
 */
export function equalRatesP(first: Counted, second: Counted): number {
  if (isUntried(first, second)) return 1;
  const total = first.count + second.count;
  const share = fairShare(first, second);
  // Splits that are equally likely must not be told apart by a rounding error.
  const bar = binomialPmf(first.count, total, share) * (1 + 1e-7);
  let p = 0;
  for (let count = 0; count <= total; count += 1) {
    const chance = binomialPmf(count, total, share);
    if (chance <= bar) p += chance;
  }
  return Math.min(1, p);
}

/**
 * One-sided p: a first count as high as this or higher, if the rates were equal; 1 with a side
 * without exposure.
 */
export function fasterP(first: Counted, second: Counted): number {
  if (isUntried(first, second)) return 1;
  const total = first.count + second.count;
  let p = 0;
  for (let count = first.count; count <= total; count += 1) {
    p += binomialPmf(count, total, fairShare(first, second));
  }
  return Math.min(1, p);
}

/**
 * How many times faster the first rate is, with exact limits (0 or Infinity where a side saw
 * nothing, both where one has no exposure). Names a value from `FEWEST_EVENTS` events in all, with at least one on either side.
 * Source: Clopper & Pearson 1934, Biometrika 26:404, as in R `poisson.test`.
 */
export function rateRatio(first: Counted, second: Counted, level = LEVEL): Estimate {
  if (isUntried(first, second)) return { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
  const tail = (1 - level) / 2;
  const toRatio = (share: number) =>
    share === 1
      ? Number.POSITIVE_INFINITY
      : ((share / (1 - share)) * second.exposure) / first.exposure;
  const limits = {
    lower: first.count === 0 ? 0 : toRatio(betaQuantile(tail, first.count, second.count + 1)),
    upper:
      second.count === 0
        ? Number.POSITIVE_INFINITY
        : toRatio(betaQuantile(1 - tail, first.count + 1, second.count)),
  };
  const enough = first.count > 0 && second.count > 0 && first.count + second.count >= FEWEST_EVENTS;
  return estimate(enough, toRatio(first.count / (first.count + second.count || 1)), limits);
}
