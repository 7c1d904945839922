/** A further fish like those there were. */
import { sum } from "../estimate.ts";

export interface Typical {
  /** Mean of one fish in grams, and the variance of one about it. */
  meanG: number;
  variance: number;
  /** Fish it was learnt from. */
  fish: number;
}

/** Weighed fish are few at first: one more is taken to lie this share of the mean off; our own choice. */
const UNKNOWN_SPREAD = 0.5;

/**
 * Mean and variance of a single fish's weight, the unknown spread counting as one fish more.
 * Undefined without a fish of known weight.
 */
export function typicalFish(
  fish: readonly { count: number; eachG: number }[],
): Typical | undefined {
  const count = sum(fish.map((one) => one.count));
  if (count === 0) return undefined;
  const meanG = sum(fish.map((one) => one.count * one.eachG)) / count;
  const squares = sum(fish.map((one) => one.count * (one.eachG - meanG) ** 2));
  return { meanG, variance: (squares + (UNKNOWN_SPREAD * meanG) ** 2) / count, fish: count };
}
