/**
 * Weights and lengths between the units of the log (grams, millimetres, milliseconds) and those an
 * angler thinks in. Exact by the international yard and pound agreement of 1959.
 */
import {
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  MM_PER_INCH,
  OUNCES_PER_POUND,
} from "../../grammar/quantity/units.ts";

export const MS_PER_MINUTE = 60_000;
export const MS_PER_HOUR = 60 * MS_PER_MINUTE;
export const MM_PER_METRE = 1000;

/** Grams in so many pounds and ounces. */
export const gramsOf = (pounds: number, ounces = 0): number =>
  pounds * GRAMS_PER_POUND + ounces * GRAMS_PER_OUNCE;

/** Millimetres in so many inches. */
export const millimetresOf = (inches: number): number => inches * MM_PER_INCH;

/**
 * Whole pounds and the ounces over, rounded to 1 / `perOunce` of an ounce, as scales show them. The
 * rounding comes first, so that 15.99 oz never shows as "0 lb 16 oz". `grams` ≥ 0.
 */
export function poundsAndOunces(grams: number, perOunce = 1): { pounds: number; ounces: number } {
  const parts = Math.round((grams / GRAMS_PER_OUNCE) * perOunce);
  const partsPerPound = OUNCES_PER_POUND * perOunce;
  return {
    pounds: Math.floor(parts / partsPerPound),
    ounces: (parts % partsPerPound) / perOunce,
  };
}
