/** Entries in English, in the unit they were spoken in, else the one that is set. */
import { sayRounded } from "../../../grammar/saying/rounded.ts";
import type { Statement } from "../../../grammar/statement.ts";
import type { WeightStyle } from "../../ui/format.ts";
import type { Settings } from "../app.ts";

export function sayShown(statement: Statement, settings: Settings): string {
  const said = sayRounded(withUnit(statement, settings));
  return said.charAt(0).toUpperCase() + said.slice(1);
}

/** What was touched in was never spoken in any unit; how far out is said in metres. */
function withUnit(statement: Statement, { weight, length }: Settings): Statement {
  const weightUnit = weight === "kg" ? "kg" : "lb";
  switch (statement.kind) {
    case "fish":
      return { ...statement, unit: { weight: weightUnit, length, ...statement.unit } };
    case "feed":
      return { ...statement, unit: { weight: "g", ...statement.unit } };
    case "change": {
      const isFar = (statement.distanceMm ?? statement.distanceByMm) !== undefined;
      return { ...statement, unit: { length: isFar ? "m" : length, ...statement.unit } };
    }
    default:
      return statement;
  }
}

/** The style in which a statement's weight is shown. */
export function weightStyleOf(statement: Statement, setting: WeightStyle): WeightStyle {
  const unit = "unit" in statement ? statement.unit?.weight : undefined;
  if (unit === undefined) return statement.kind === "feed" ? "kg" : setting;
  return unit === "lb" || unit === "oz" ? "lb-oz" : "kg";
}

/** The style in which a statement's lengths are shown. */
export function lengthStyleOf(statement: Statement, setting: Settings["length"]) {
  const unit = "unit" in statement ? statement.unit?.length : undefined;
  if (unit === undefined) return setting;
  return unit === "in" || unit === "ft" ? "in" : "cm";
}
