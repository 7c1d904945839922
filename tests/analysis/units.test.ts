import units from "cldr-core/supplemental/units.json";
import Qty from "js-quantities";
import { describe, expect, test } from "vitest";
import {
  GRAMS_PER_DRAM,
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  GRAMS_PER_STONE,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM_PER_YARD,
} from "../../grammar/quantity/units.ts";
import { gramsOf, millimetresOf, poundsAndOunces } from "../../src/analysis/units.ts";

const cldr = units.supplemental as unknown as {
  unitConstants: Record<string, { _value: string }>;
  convertUnits: Record<string, { _baseUnit: string; _factor: string }>;
};

/** Works out a CLDR factor such as "lb_to_kg/16": constants and numbers joined by * and /. */
function factor(unit: string): number {
  const parts = cldr.convertUnits[unit]?._factor.split(/([*/])/) ?? [];
  return parts.reduce((value, part, place) => {
    if (place % 2 === 1) return value;
    const number = Number(cldr.unitConstants[part]?._value ?? part);
    return parts[place - 1] === "/" ? value / number : value * number;
  }, 1);
}

describe("units", () => {
  test.each([
    ["pound", GRAMS_PER_POUND, 453.59237],
    ["ounce", GRAMS_PER_OUNCE, 28.349523125],
    ["dram", GRAMS_PER_DRAM, 1.7718451953125],
    ["stone", GRAMS_PER_STONE, 6350.29318],
    ["inch", MM_PER_INCH, 25.4],
    ["foot", MM_PER_FOOT, 304.8],
    ["yard", MM_PER_YARD, 914.4],
  ])("a %s is exact (international yard and pound agreement 1959)", (_, ours, exact) => {
    expect(ours).toBeCloseTo(exact, 10);
  });

  test.each([
    ["pound", GRAMS_PER_POUND],
    ["ounce", GRAMS_PER_OUNCE],
    ["stone", GRAMS_PER_STONE],
    ["inch", MM_PER_INCH],
    ["foot", MM_PER_FOOT],
    ["yard", MM_PER_YARD],
  ])("a %s is Unicode CLDR supplemental/units.json's", (unit, ours) => {
    expect(ours).toBeCloseTo(factor(unit) * 1000, 9);
  });

  test("CLDR's dram is the fluid one, so ours must not be checked against it", () => {
    expect(cldr.convertUnits.dram?._baseUnit).toBe("cubic-meter");
  });

  test("2 lb + 8 oz = 1133.980925 g (npm js-quantities)", () => {
    expect(gramsOf(2, 8)).toBeCloseTo(1133.980925, 9);
    // js-quantities rounds on the way.
    expect(gramsOf(2, 8)).toBeCloseTo(Qty("2 lb").add("8 oz").to("g").scalar, 5);
    expect(millimetresOf(16)).toBeCloseTo(Qty("16 in").to("mm").scalar, 9);
  });

  test("pounds and ounces carry over and come back", () => {
    expect(poundsAndOunces(gramsOf(2, 8))).toEqual({ pounds: 2, ounces: 8 });
    expect(poundsAndOunces(gramsOf(0, 15.99))).toEqual({ pounds: 1, ounces: 0 });
    expect(poundsAndOunces(gramsOf(3, 7.5), 4)).toEqual({ pounds: 3, ounces: 7.5 });
    expect(poundsAndOunces(0)).toEqual({ pounds: 0, ounces: 0 });
  });
});
