/** How fast a sphere falls through still water once its speed is steady. SI units throughout. */
import type { Water } from "./water.ts";

export interface Sphere {
  /** m, and kg/m³. */
  diameter: number;
  density: number;
}

const GRAVITY = 9.80665;

/** Above this Reynolds number a sphere's drag hardly changes with speed any more. */
const NEWTON_FROM = 1000;
const NEWTON_DRAG = 0.44;

/**
 * Drag coefficient of a sphere at a Reynolds number from 0 (exclusive) to 200,000. Correlations
 * differ by up to 4 %. Source: Schiller & Naumann 1935, VDI-Zeitschrift 77:318.
 */
export const drag = (reynolds: number): number =>
  reynolds < NEWTON_FROM ? (24 / reynolds) * (1 + 0.15 * reynolds ** 0.687) : NEWTON_DRAG;

/** Stokes' speed in m/s, the slow limit in which viscosity is all there is. */
export const stokesSpeed = ({ diameter, density }: Sphere, water: Water): number =>
  (GRAVITY * diameter ** 2 * (density - water.density)) / (18 * water.viscosity);

/**
 * Steady fall speed in m/s; a sphere no denser than the water, or of no size, does not fall and gives 0. Weight and
 * drag are balanced by halving the interval between rest and Stokes' speed, which is never passed.
 */
export function fallSpeed(sphere: Sphere, water: Water): number {
  if (sphere.density <= water.density || sphere.diameter <= 0) return 0;
  const { diameter, density } = sphere;
  const weight = (4 / 3) * GRAVITY * diameter * (density / water.density - 1);
  let [low, high] = [0, stokesSpeed(sphere, water)];
  while (high - low > high * 1e-9) {
    const speed = (low + high) / 2;
    const reynolds = (water.density * speed * diameter) / water.viscosity;
    if (drag(reynolds) * speed ** 2 < weight) low = speed;
    else high = speed;
  }
  return (low + high) / 2;
}

/**
 * The density in kg/m³ of a sphere that was seen to fall at `speed` m/s: what timing one pellet says
 * of them all, in water of any temperature. One that does not fall is as dense as the water.
 */
export function densityFromFall(diameter: number, speed: number, water: Water): number {
  if (speed <= 0 || diameter <= 0) return water.density;
  const reynolds = (water.density * speed * diameter) / water.viscosity;
  return water.density * (1 + (3 * drag(reynolds) * speed ** 2) / (4 * GRAVITY * diameter));
}
