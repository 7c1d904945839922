/**
 * What split shot weighs and pole floats carry, in grams, as the spread between makers: values from
 * memory; common practice, no source.
 */
import type { Interval } from "../estimate.ts";

const spread = (lower: number, upper = lower): Interval => ({ lower, upper });

/** By size as stamped; the numbers stand for "no. 8" and the like. */
export const SHOT: Readonly<Record<string, Interval>> = {
  SSG: spread(1.6, 1.9),
  AAA: spread(0.75, 0.85),
  AB: spread(0.6),
  BB: spread(0.4),
  "1": spread(0.28, 0.3),
  "3": spread(0.2, 0.25),
  "4": spread(0.17, 0.2),
  "5": spread(0.13, 0.15),
  "6": spread(0.1, 0.105),
  "8": spread(0.06, 0.065),
  "9": spread(0.048, 0.05),
  "10": spread(0.032, 0.04),
  "11": spread(0.025, 0.03),
  "12": spread(0.02),
  "13": spread(0.013, 0.016),
};

/** By the label on the float, whose numbers are not shot numbers. */
export const POLE_FLOATS: Readonly<Record<string, Interval>> = {
  "4x10": spread(0.1, 0.15),
  "4x12": spread(0.15, 0.2),
  "4x14": spread(0.3, 0.4),
  "4x16": spread(0.5),
  "4x18": spread(0.75),
  "4x20": spread(1, 1.25),
};
