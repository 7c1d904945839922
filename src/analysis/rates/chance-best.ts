/** Which of several rates is truly the highest. */
import { gammaCdf, gammaQuantile } from "../distributions/gamma.ts";
import type { RateBelief } from "./gamma-poisson.ts";

/** Steps of the integration; with 256 the chances are right to about 0.001. */
const STEPS = 256;

/**
 * For each belief the chance that its rate is above all the others': the integral of its density
 * times the others' distribution functions, by the midpoint rule on steps that grow with the rate.
 * The chances add up to 1. No belief gives no chance, a single one is the best for certain.
 */
export function chancesBest(beliefs: readonly RateBelief[]): number[] {
  if (beliefs.length < 2) return beliefs.map(() => 1);
  const tops = beliefs.map(({ shape, rate }) => gammaQuantile(1 - 1e-6, shape, rate));
  const top = Math.max(...tops);
  const marks = Array.from({ length: STEPS + 1 }, (_, step) => top * (step / STEPS) ** 2);
  const below = beliefs.map(({ shape, rate }) => marks.map((mark) => gammaCdf(mark, shape, rate)));
  const chances = below.map((own, place) => {
    let chance = 0;
    for (let step = 0; step < STEPS; step += 1) {
      const mass = (own[step + 1] ?? 1) - (own[step] ?? 0);
      const others = below.reduce(
        (product, other, place2) =>
          place2 === place
            ? product
            : (product * ((other[step] ?? 0) + (other[step + 1] ?? 1))) / 2,
        1,
      );
      chance += mass * others;
    }
    return chance;
  });
  const total = chances.reduce((all, chance) => all + chance, 0);
  return chances.map((chance) => chance / total);
}
