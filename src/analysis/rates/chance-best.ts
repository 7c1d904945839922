/** Which of several rates is truly the highest. */
import { gammaCdf } from "../distributions/gamma.ts";
import { chanceFaster, type RateBelief } from "./gamma-poisson.ts";

/** Steps laid over each belief, from so many standard deviations below its middle to above it. */
const STEPS = 24;
const REACH = 5;

/**
 * Rates at which a belief is looked at: evenly spread over it, as the cube root of a gamma is nearly
 * normal. Source: Wilson & Hilferty 1931, PNAS 17:684 (from memory; any spread of marks would do).
 */
const marksOf = ({ shape, rate }: RateBelief): number[] =>
  Array.from({ length: STEPS + 1 }, (_, step) => {
    const deviation = REACH * ((2 * step) / STEPS - 1);
    const root = 1 - 1 / (9 * shape) + deviation / (3 * Math.sqrt(shape));
    return (shape / rate) * Math.max(0, root) ** 3;
  });

/** The chance that the belief at `place` lies in each step while all others lie below it, added up. */
function chanceAt(place: number, below: readonly (readonly number[])[]): number {
  const own = below[place] ?? [];
  let chance = 0;
  for (let step = 1; step < own.length; step += 1) {
    let others = (own[step] ?? 0) - (own[step - 1] ?? 0);
    for (const [at, other] of below.entries()) {
      if (at !== place) others *= ((other[step - 1] ?? 0) + (other[step] ?? 0)) / 2;
    }
    chance += others;
  }
  return chance;
}

/**
 * For each belief the chance that its rate is above all the others'. Of two it is exact; of more it
 * is the integral of one density times the others' distribution functions, right to about 0.001.
 * The chances add up to 1. No belief gives no chance, a single one is the best for certain.
 */
export function chancesBest(beliefs: readonly RateBelief[]): number[] {
  const [first, second] = beliefs;
  if (!first || !second) return beliefs.map(() => 1);
  if (beliefs.length === 2) return [chanceFaster(first, second), chanceFaster(second, first)];
  const marks = [...new Set(beliefs.flatMap(marksOf))].sort((one, other) => one - other);
  const below = beliefs.map(({ shape, rate }) => marks.map((mark) => gammaCdf(mark, shape, rate)));
  const chances = beliefs.map((_, place) => chanceAt(place, below));
  const total = chances.reduce((all, chance) => all + chance, 0);
  return chances.map((chance) => chance / total);
}
