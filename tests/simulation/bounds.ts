/** Whether so many of so many can have come about by a given chance. */
import binomialPmf from "@stdlib/stats-base-dists-binomial-pmf";
import type { Call } from "./tally.ts";

/** What is rarer than this is not put down to luck. */
const RARE = 0.0005;

const chanceOf = (from: number, to: number, trials: number, chance: number): number => {
  let sum = 0;
  for (let count = from; count <= to; count += 1) sum += binomialPmf(count, trials, chance);
  return sum;
};

/** Whether `count` of `trials` may come of a chance that is anywhere from `low` to `high`. */
export const agrees = (count: number, trials: number, low: number, high = 1): boolean =>
  chanceOf(0, count, trials, low) > RARE &&
  (high === 1 || chanceOf(count, trials, trials, high) > RARE);

/** The normal deviation that is passed as rarely, either way. */
const FAR = 3.3;

/** Whether what was told so likely came so often: the sum of what came lies near that of the chances. */
export function isCalibrated(calls: readonly Call[]): boolean {
  const told = calls.reduce((sum, { chance }) => sum + chance, 0);
  const came = calls.filter((call) => call.came).length;
  const variance = calls.reduce((sum, { chance }) => sum + chance * (1 - chance), 0);
  return Math.abs(came - told) < FAR * Math.sqrt(variance);
}
