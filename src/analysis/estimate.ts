/** How every sum answers: with a value and its limits, or with the limits alone. */

/** Limits that hold the value with a stated probability; `upper` is Infinity where nothing bounds it. */
export interface Interval {
  lower: number;
  upper: number;
}

export interface Told extends Interval {
  tells: true;
  value: number;
}

/** Too few to tell: the limits still stand, but no single value should be named. */
export interface TooFew extends Interval {
  tells: false;
}

export type Estimate = Told | TooFew;

/** The probability of every interval that is not told otherwise. */
export const LEVEL = 0.95;

/**
 * Fewest events of which a rate is told. A choice of our own: with four, the upper Garwood limit is
 * over nine times the lower one, with five about seven times.
 */
export const FEWEST_EVENTS = 5;

/** An estimate that names its value only where `enough` is true. */
export const estimate = (enough: boolean, value: number, limits: Interval): Estimate =>
  enough
    ? { tells: true, value, lower: limits.lower, upper: limits.upper }
    : { tells: false, lower: limits.lower, upper: limits.upper };

/** The arithmetic mean; 0 for none. */
export const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : sum(values) / values.length;

export const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);
