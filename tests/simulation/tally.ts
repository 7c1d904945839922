/** How often limits held, and how often what was called so likely was so. */
import type { Estimate, Interval } from "../../src/analysis/estimate.ts";

/** Limits beside the truth. `named`: whether a value was named with them. */
export interface Try {
  held: boolean;
  named: boolean;
}

export const tryOf = (limits: Interval, truth: number, named = true): Try => ({
  held: limits.lower <= truth && truth <= limits.upper,
  named,
});

export const tryOfEstimate = (estimate: Estimate, truth: number): Try =>
  tryOf(estimate, truth, estimate.tells);

export const shareOf = <T>(items: readonly T[], so: (item: T) => boolean): number =>
  items.filter(so).length / items.length;

/** A chance that was told, and what came of it. */
export interface Call {
  chance: number;
  came: boolean;
}

export interface Bin {
  from: number;
  calls: number;
  /** Mean of the chances told, and the share that came. */
  told: number;
  came: number;
}

/** The calls by the chance told, in so many bins of equal width; empty bins are left out. */
export function calibration(calls: readonly Call[], bins = 10): Bin[] {
  return Array.from({ length: bins }, (_, place) => {
    const inBin = calls.filter(
      ({ chance }) => Math.min(bins - 1, Math.floor(chance * bins)) === place,
    );
    return {
      from: place / bins,
      calls: inBin.length,
      told: inBin.reduce((total, { chance }) => total + chance, 0) / inBin.length,
      came: shareOf(inBin, ({ came }) => came),
    };
  }).filter(({ calls: number }) => number > 0);
}

/** The value below which a share of the sorted values lies; Infinities count as the largest. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
