/** Two levels of a factor held against each other. */
import type { Exposure } from "../effort/exposure.ts";
import { type Estimate, FEWEST_EVENTS } from "../estimate.ts";
import { chanceFaster, levelPrior, updated } from "./gamma-poisson.ts";
import { type Counted, equalRatesP, rateRatio } from "./two-rates.ts";

export interface Comparison {
  /** False with fewer than `FEWEST_EVENTS` fish in all, or a level that was not fished. */
  tells: boolean;
  /** How many times faster the first is. */
  ratio: Estimate;
  /** Two-sided p of equal rates. */
  p: number;
  /** Chance that the first is truly faster; one half while it does not tell. */
  chanceFaster: number;
}

const countedOf = ({ fish, hours }: Pick<Exposure, "fish" | "hours">): Counted => ({
  count: fish,
  exposure: hours,
});

/**
 * Fish per hour of the first level against the second. The exact test and limits stand beside the
 * chance, which starts from a belief worth a few fish at the common pace for either.
 */
export function compareRates(
  one: Pick<Exposure, "fish" | "hours">,
  other: Pick<Exposure, "fish" | "hours">,
): Comparison {
  const [first, second] = [countedOf(one), countedOf(other)];
  if (first.exposure <= 0 || second.exposure <= 0) {
    const anything = { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY } as const;
    return { tells: false, ratio: anything, p: 1, chanceFaster: 0.5 };
  }
  const fish = first.count + second.count;
  const tells = fish >= FEWEST_EVENTS;
  const prior = levelPrior(fish, first.exposure + second.exposure);
  const belief = ({ count, exposure }: Counted) => updated(prior, count, exposure);
  return {
    tells,
    ratio: rateRatio(first, second),
    p: equalRatesP(first, second),
    chanceFaster: tells ? chanceFaster(belief(first), belief(second)) : 0.5,
  };
}
