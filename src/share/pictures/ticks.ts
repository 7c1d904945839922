/** Round values to rule and to name. */
import { scaleLinear } from "d3-scale";
import type { Tick } from "../../ui/charts/axes.tsx";
import type { LengthStyle, WeightStyle } from "../../ui/format.ts";
import { depthUnit, weightUnit } from "../../ui/units.ts";

/**
 * Round steps from 0 to the first at or above `top`, which comes in the unit that is shown and is
 * taken for `least` where it is less.
 */
function roundSteps(top: number, least: number, about: number): number[] {
  const scale = scaleLinear([0, Math.max(top, least)], [0, 1]).nice(about);
  return scale.ticks(about);
}

const shown = (value: number): string => String(Number(value.toFixed(2)));

/** A scale for less would name tenths of a unit. */
const LEAST_WEIGHT = 4;

/** @param top grams */
export function weightTicks(top: number, style: WeightStyle, about = 4): Tick[] {
  const { size, name } = weightUnit(style);
  return roundSteps(top / size, LEAST_WEIGHT, about).map((value) => ({
    at: value * size,
    name: `${shown(value)} ${name}`,
  }));
}

/** @param top millimetres */
export function depthTicks(top: number, style: LengthStyle): Tick[] {
  const { size, name } = depthUnit(style);
  return roundSteps(top / size, 0.1, 4).map((value) => ({
    at: value * size,
    name: `${shown(value)} ${name}`,
  }));
}

/** @param top per hour */
export const rateTicks = (top: number): Tick[] =>
  roundSteps(top, 1, 5).map((at) => ({ at, name: shown(at) }));

/** @param top seconds; steps are of half a minute or more */
export function waitTicks(top: number): Tick[] {
  const step = [30, 60, 120, 300, 600, 1200, 3600].find((size) => top / size <= 6) ?? 7200;
  const count = Math.max(1, Math.ceil(top / step));
  return Array.from({ length: count + 1 }, (_, place) => ({
    at: place * step,
    name: step < 60 ? `${place * step} s` : `${shown((place * step) / 60)} min`,
  }));
}
