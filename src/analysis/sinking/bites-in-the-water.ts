/** Where in the water the bites come: on the drop, or once the rig has settled. */
import { FEWEST_EVENTS } from "../estimate.ts";
import type { BiteDepth } from "./bite-depth.ts";

export interface InTheWater {
  /** Bites whose depth is known. */
  bites: number;
  /** Those that came before the bait can have reached its full depth. */
  onTheDrop: number;
  /**
   * The middle depth of those on the drop and the depths between which half of them lie, in
   * millimetres; absent with fewer than `FEWEST_EVENTS` of them.
   */
  drop?: { middleMm: number; lower: number; upper: number };
}

/** Where some bites came. A bite that may have come at full depth is not counted as on the drop. */
export function inTheWater(depths: readonly BiteDepth[]): InTheWater {
  const dropping = depths
    .flatMap(({ depthMm, settled }) => (settled ? [] : [depthMm]))
    .sort((one, other) => one - other);
  const bites = depths.length;
  const onTheDrop = dropping.length;
  if (onTheDrop < FEWEST_EVENTS) return { bites, onTheDrop };
  const [lower, middleMm, upper] = [0.25, 0.5, 0.75].map((share) => quantile(dropping, share));
  return {
    bites,
    onTheDrop,
    drop: { middleMm: middleMm ?? 0, lower: lower ?? 0, upper: upper ?? 0 },
  };
}

/**
 * The value that a share (0 to 1) of some ascending ones does not pass, between the two nearest.
 * Source: Hyndman & Fan 1996, "Sample quantiles in statistical packages", The American Statistician
 * 50:361, type 7 (from memory).
 */
export function quantile(ascending: readonly number[], share: number): number {
  const place = (ascending.length - 1) * share;
  const below = Math.floor(place);
  const low = ascending[below] ?? 0;
  const high = ascending[Math.min(below + 1, ascending.length - 1)] ?? low;
  return low + (place - below) * (high - low);
}
