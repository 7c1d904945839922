/** What is said to eyes and ears: a share of "a pound for the three" is about 5¼ ounces. */
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from "../quantity/units.ts";
import { say } from "../say.ts";
import type { Statement, WeightUnit } from "../statement.ts";

/** In grams. Finer than this nobody says a fish's weight. */
const FINEST: Readonly<Record<WeightUnit, number>> = {
  lb: GRAMS_PER_OUNCE / 4,
  oz: GRAMS_PER_OUNCE / 4,
  g: 1,
  kg: 10,
};
const QUARTER_POUND_G = GRAMS_PER_POUND / 4;

/** The statement in English, its weight no finer than people say one; not for reading back. */
export const sayRounded = (statement: Statement): string => say(rounded(statement));

function rounded(statement: Statement): Statement {
  if (statement.kind !== "fish" || statement.weightG === undefined) return statement;
  const spoken = statement.unit?.weight ?? "lb";
  const weightG = nearest(statement.weightG, FINEST[spoken]) || statement.weightG;
  const isOunces = spoken === "lb" && weightG < GRAMS_PER_POUND && !isQuarters(weightG);
  return {
    ...statement,
    weightG,
    unit: { ...statement.unit, weight: isOunces ? "oz" : spoken },
  };
}

const nearest = (g: number, step: number): number => Math.round(g / step) * step;

/** "half a pound" and "three quarters of a pound" stay as they are. */
const isQuarters = (g: number): boolean => Math.abs(g - nearest(g, QUARTER_POUND_G)) < 1e-6;
