/** Draws that are the same on every run with the same seed. */
import { gammaQuantile } from "../../src/analysis/distributions/gamma.ts";
import { normalQuantile } from "../../src/analysis/distributions/normal.ts";
import { randomNumbers } from "../analysis/fixtures/session.ts";

export interface Random {
  between(low: number, high: number): number;
  happens(chance: number): boolean;
  pick<T>(items: readonly [T, ...T[]]): T;
  /** Normal about nought. */
  normal(deviation: number): number;
  exponential(mean: number): number;
  /** Gamma with mean 1; `spread` is its standard deviation, 0 gives 1. */
  gamma(spread: number): number;
}

/** Half a step of the generator, which keeps a share off 0 and 1. */
const HALF_STEP = 2 ** -33;

export function randomOf(seed: number): Random {
  const numbers = randomNumbers(seed);
  const share = () => numbers() + HALF_STEP;
  return {
    between: (low, high) => low + (high - low) * share(),
    happens: (chance) => share() < chance,
    pick: (items) => items[Math.floor(share() * items.length)] ?? items[0],
    normal: (deviation) => deviation * normalQuantile(share()),
    exponential: (mean) => -mean * Math.log(share()),
    gamma: (spread) => {
      const at = share();
      return spread === 0 ? 1 : gammaQuantile(at, spread ** -2, spread ** -2);
    },
  };
}
