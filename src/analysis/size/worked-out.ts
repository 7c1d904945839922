/** A weight worked out from a length, and a doubt about a pair that cannot be one fish. */

import { normalHalfWidth } from "../distributions/normal.ts";
import { type NormalBelief, observedTotal } from "../distributions/normal-belief.ts";
import { type Interval, LEVEL, sum } from "../estimate.ts";
import type { MassSums } from "../weights/typical.ts";
import type { Measured } from "./fit.ts";
import { type Relation, weightAt } from "./relation.ts";

/**
 * How far, in ln W, a water's fish as a whole may be fatter or thinner than the relation says, before
 * any of them was weighed. A choice of our own; mean condition differs by about as much between
 * the waters named in `species.ts`.
 */
export const UNKNOWN_CONDITION: NormalBelief = { mean: 0, variance: 0.15 ** 2 };

/** A pair further from the relation than this many standard deviations is doubted; our own choice. */
const DOUBT_AT = 4;

/** The condition of this water's fish after some that were both measured and weighed. */
export const conditionAfter = (
  fish: readonly Measured[],
  relation: Relation,
  prior = UNKNOWN_CONDITION,
): NormalBelief =>
  conditionFrom(
    fish.length,
    sum(fish.map(({ weightG, lengthMm }) => Math.log(weightG / weightAt(lengthMm, relation)))),
    relation,
    prior,
  );

/** The same from the number of such fish and their ln(weight / relation's weight) added up. */
export const conditionFrom = (
  fish: number,
  logs: number,
  relation: Relation,
  prior = UNKNOWN_CONDITION,
): NormalBelief => observedTotal(prior, fish, logs, relation.spread ** 2);

const spreadOf = (relation: Relation, shift: NormalBelief): number =>
  Math.sqrt(relation.spread ** 2 + shift.variance);

export interface WorkedOut extends Interval {
  /** The mean, so that sums over many fish come out right. */
  weightG: number;
  /** Variance of a single fish's weight, in grams squared. */
  variance: number;
}

/**
 * Grams of a fish of `lengthMm` (> 0) that was not weighed: log-normal about the relation.
 */
export function workOutWeight(
  lengthMm: number,
  relation: Relation,
  shift = UNKNOWN_CONDITION,
  level = LEVEL,
): WorkedOut {
  const median = weightAt(lengthMm, relation) * Math.exp(shift.mean);
  const spread = spreadOf(relation, shift);
  const half = normalHalfWidth(level) * spread;
  const weightG = median * Math.exp(spread ** 2 / 2);
  return {
    weightG,
    variance: weightG ** 2 * Math.expm1(spread ** 2),
    lower: median * Math.exp(-half),
    upper: median * Math.exp(half),
  };
}

/** A relation put right for the condition of a water's fish. */
export interface Shifted {
  ofLength(lengthMm: number): { eachG: number; variance: number };
  /** For fish added up at the relation's own weights. */
  ofSums(sums: MassSums): MassSums & { variance: number };
}

/** A relation as it holds on this water. @param shift of the mean of ln(grams), as the day's own pairs tell it */
export function shiftedBy(relation: Relation, shift: NormalBelief): Shifted {
  const spread = spreadOf(relation, shift);
  const factor = Math.exp(shift.mean + spread ** 2 / 2);
  const doubt = Math.expm1(spread ** 2);
  return {
    ofLength(lengthMm) {
      const eachG = factor * weightAt(lengthMm, relation);
      return { eachG, variance: eachG ** 2 * doubt };
    },
    ofSums({ fish, totalG, squares }) {
      const shifted = factor ** 2 * squares;
      return { fish, totalG: factor * totalG, squares: shifted, variance: shifted * doubt };
    },
  };
}

/** Whether a length and a weight can hardly be of one fish of this kind. Both > 0. */
export function isDoubtful(fish: Measured, relation: Relation, shift = UNKNOWN_CONDITION): boolean {
  const expected = Math.log(weightAt(fish.lengthMm, relation)) + shift.mean;
  return Math.abs(Math.log(fish.weightG) - expected) > DOUBT_AT * spreadOf(relation, shift);
}
