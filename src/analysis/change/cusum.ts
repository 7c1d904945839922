/** A running sum that notices when a mean has shifted. */

export interface CusumDesign {
  /** The mean to be kept, and the allowance about it that adds nothing; the unit of the readings. */
  target: number;
  allowance: number;
}

/** The sums of what lay above and below the target by more than the allowance; both ≥ 0. */
export interface Cusum {
  above: number;
  below: number;
}

export const CUSUM_START: Cusum = { above: 0, below: 0 };

/**
 * The sums after one more reading. A sum over the decision limit is a signal.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.3.
 */
export const cusumAfter = (
  { above, below }: Cusum,
  reading: number,
  { target, allowance }: CusumDesign,
): Cusum => ({
  above: Math.max(0, above + reading - target - allowance),
  below: Math.max(0, below + target - allowance - reading),
});
