/**
 * Units as spoken and printed, with their size. Exact by the international yard and pound agreement
 * of 1959: a pound is 453.59237 g, an inch 25.4 mm.
 */
import type { LengthUnit, WeightUnit } from "../statement.ts";

export const GRAMS_PER_POUND = 453.59237;
export const OUNCES_PER_POUND = 16;
/** Sixteen is a power of two, so ounces and pounds add up without a rounding error between them. */
export const GRAMS_PER_OUNCE = GRAMS_PER_POUND / OUNCES_PER_POUND;
export const GRAMS_PER_DRAM = GRAMS_PER_OUNCE / 16;
export const GRAMS_PER_STONE = 14 * GRAMS_PER_POUND;
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 304.8;
export const MM_PER_YARD = 914.4;

export interface UnitWord<U> {
  unit: U;
  /** Grams or millimetres in one. */
  size: number;
}

function byWord<U>(rows: readonly [words: string, unit: U, size: number][]) {
  return new Map(
    rows.flatMap(([words, unit, size]) =>
      words.split(" ").map((word): [string, UnitWord<U>] => [word, { unit, size }]),
    ),
  );
}

export const WEIGHT_WORDS: ReadonlyMap<string, UnitWord<WeightUnit>> = byWord<WeightUnit>([
  ["pound pounds lb lbs pounder pounders", "lb", GRAMS_PER_POUND],
  ["ounce ounces oz ozs ouncer ouncers", "oz", GRAMS_PER_OUNCE],
  ["dram drams", "oz", GRAMS_PER_DRAM],
  ["stone stones st", "lb", GRAMS_PER_STONE],
  ["kilo kilos kg kgs kilogram kilograms kilogramme kilogrammes", "kg", 1000],
  ["gram grams gramme grammes g gm gms", "g", 1],
]);

export const LENGTH_WORDS: ReadonlyMap<string, UnitWord<LengthUnit>> = byWord<LengthUnit>([
  ["inch inches in incher", "in", MM_PER_INCH],
  ["foot feet ft footer", "ft", MM_PER_FOOT],
  ["yard yards yd yds", "ft", MM_PER_YARD],
  ["mil mils mill mills millimetre millimetres millimeter millimeters mm mms", "mm", 1],
  ["centimetre centimetres centimeter centimeters cm cms centi centis", "cm", 10],
  ["metre metres meter meters m mtr mtrs", "m", 1000],
]);
