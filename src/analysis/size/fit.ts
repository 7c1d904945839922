/** A length-weight relation from fish that were both measured and weighed. */
import { mean, sum } from "../estimate.ts";
import type { LengthType, Relation } from "./relation.ts";

/** Grams and millimetres. */
export interface Measured {
  weightG: number;
  lengthMm: number;
}

export type Fit = ({ tells: true } & Relation) | { tells: false };

/** A line through logarithms has two unknowns, its spread a third; fewer than this fit anything. */
const FEWEST_PAIRS = 5;

/**
 * Least squares of ln W on ln L. Needs `FEWEST_PAIRS` fish and more than one length; a fish of no
 * weight or no length is left out. The spread is the residual standard deviation with n − 2 degrees of freedom.
 * Source: Froese 2006, J. Appl. Ichthyol. 22:241.
 */
export function fitRelation(fish: readonly Measured[], lengthType: LengthType): Fit {
  const usable = fish.filter(({ weightG, lengthMm }) => weightG > 0 && lengthMm > 0);
  const x = usable.map(({ lengthMm }) => Math.log(lengthMm / 10));
  const y = usable.map(({ weightG }) => Math.log(weightG));
  const [meanX, meanY] = [mean(x), mean(y)];
  const squares = sum(x.map((value) => (value - meanX) ** 2));
  if (usable.length < FEWEST_PAIRS || squares < Number.EPSILON) return { tells: false };
  const b = sum(x.map((value, place) => (value - meanX) * ((y[place] ?? meanY) - meanY))) / squares;
  const intercept = meanY - b * meanX;
  const residuals = x.map((value, place) => (y[place] ?? meanY) - intercept - b * value);
  const spread = Math.sqrt(sum(residuals.map((value) => value ** 2)) / (usable.length - 2));
  return { tells: true, a: Math.exp(intercept), b, lengthType, spread };
}
