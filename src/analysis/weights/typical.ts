/** A further fish like those there were. */

export interface Typical {
  /** Mean of one fish in grams, and the variance of one about it. */
  meanG: number;
  variance: number;
  /** Fish it was learnt from. */
  fish: number;
}

/** Some fish by their number, their grams added up, and the squares of their grams added up. */
export interface MassSums {
  fish: number;
  totalG: number;
  squares: number;
}

/** The sums of no fish at all. */
export const NO_MASS: MassSums = { fish: 0, totalG: 0, squares: 0 };

/** With `fish` more of `eachG` grams, or of another `totalG` and `squares`. */
export const withMass = (one: MassSums, other: MassSums): MassSums => ({
  fish: one.fish + other.fish,
  totalG: one.totalG + other.totalG,
  squares: one.squares + other.squares,
});

/** So many fish of one weight. */
export const alike = (fish: number, eachG: number): MassSums => ({
  fish,
  totalG: fish * eachG,
  squares: fish * eachG ** 2,
});

/** Weighed fish are few at first: one more is taken to lie this share of the mean off; our own choice. */
const UNKNOWN_SPREAD = 0.5;

/**
 * Mean and variance of a single fish's weight, the unknown spread counting as one fish more.
 * Undefined without a fish of known weight.
 */
export function typicalOf({ fish, totalG, squares }: MassSums): Typical | undefined {
  if (fish <= 0) return undefined;
  const meanG = totalG / fish;
  // Rounding may take equal fish a hair below nought.
  const aboutMean = Math.max(0, squares - fish * meanG ** 2);
  return { meanG, variance: (aboutMean + (UNKNOWN_SPREAD * meanG) ** 2) / fish, fish };
}

/** The same of fish told one by one. */
export const typicalFish = (
  fish: readonly { count: number; eachG: number }[],
): Typical | undefined =>
  typicalOf(fish.reduce((sums, { count, eachG }) => withMass(sums, alike(count, eachG)), NO_MASS));
