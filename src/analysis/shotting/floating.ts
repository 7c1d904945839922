/** Whether the shot on a rig is carried by its float. */
import type { Interval } from "../estimate.ts";
import { SHOT } from "./shot.ts";

export interface Shots {
  /** A size of the table, such as "8" or "BB". */
  size: string;
  count: number;
}

/** Grams of some shot between the lightest and the heaviest makers. */
export interface ShotLoad extends Interval {
  /** Sizes that are not in the table; they add nothing. */
  unknown: readonly string[];
}

export type Floating = "floats" | "sinks" | "depends" | "unknown";

/** What some shot weighs together; no shot weighs nothing. */
export function shotLoad(shots: readonly Shots[]): ShotLoad {
  const load = { lower: 0, upper: 0 };
  const unknown: string[] = [];
  for (const { size, count } of shots) {
    const each = Object.hasOwn(SHOT, size) ? SHOT[size] : undefined;
    if (each) {
      load.lower += each.lower * count;
      load.upper += each.upper * count;
    } else unknown.push(size);
  }
  return { ...load, unknown };
}

/**
 * Whether a float that carries so many grams holds up its shot, hook and bait (`extraG`, ≥ 0):
 * "depends" where the makers' spread could go either way, "unknown" with a size no table knows,
 * unless the known ones sink it already.
 */
export function floating(carries: Interval, shots: readonly Shots[], extraG = 0): Floating {
  const load = shotLoad(shots);
  if (load.lower + extraG > carries.upper) return "sinks";
  if (load.unknown.length > 0) return "unknown";
  return load.upper + extraG <= carries.lower ? "floats" : "depends";
}
