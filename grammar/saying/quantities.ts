/** Quantities in English, in the unit they were spoken in, so that reading them gives them back. */
import { GRAMS_PER_OUNCE, MM_PER_INCH, OUNCES_PER_POUND } from "../quantity/units.ts";
import type { LengthUnit, WeightUnit } from "../statement.ts";

/** Up to six decimals, which tell a quarter ounce in pounds, without trailing noughts. */
export const sayNumber = (value: number): string => String(Math.round(value * 1e6) / 1e6);

const counted = (value: number, one: string, many: string): string =>
  `${sayNumber(value)} ${sayNumber(value) === "1" ? one : many}`;

const HALVES: ReadonlyMap<string, string> = new Map([
  ["0.25", "a quarter of a"],
  ["0.5", "half a"],
  ["0.75", "three quarters of a"],
]);

/** Below one whole unit: "half a pound", "0.3 feet". */
const partOf = (value: number, one: string, many: string): string => {
  const half = HALVES.get(sayNumber(value));
  return half ? `${half} ${one}` : `${sayNumber(value)} ${many}`;
};

/** @param g grams */
export function sayWeight(g: number, unit: WeightUnit = "lb"): string {
  switch (unit) {
    case "kg":
      return g < 1000 ? partOf(g / 1000, "kilo", "kilos") : counted(g / 1000, "kilo", "kilos");
    case "g":
      return counted(g, "gram", "grams");
    case "oz":
      return counted(g / GRAMS_PER_OUNCE, "ounce", "ounces");
    case "lb":
      return sayPounds(g / GRAMS_PER_OUNCE);
  }
}

function sayPounds(ounces: number): string {
  const rounded = Math.round(ounces * 1000) / 1000;
  const pounds = Math.floor(rounded / OUNCES_PER_POUND);
  const rest = rounded - pounds * OUNCES_PER_POUND;
  if (pounds === 0) return partOf(rounded / OUNCES_PER_POUND, "pound", "pounds");
  const whole = counted(pounds, "pound", "pounds");
  return rest === 0 ? whole : `${whole} ${counted(rest, "ounce", "ounces")}`;
}

/** @param mm millimetres */
export function sayLength(mm: number, unit: LengthUnit = "cm"): string {
  switch (unit) {
    case "mm":
      return counted(mm, "millimetre", "millimetres");
    case "cm":
      return counted(mm / 10, "centimetre", "centimetres");
    case "m":
      return mm < 1000
        ? partOf(mm / 1000, "metre", "metres")
        : counted(mm / 1000, "metre", "metres");
    case "in":
      return counted(mm / MM_PER_INCH, "inch", "inches");
    case "ft":
      return sayFeet(mm / MM_PER_INCH);
  }
}

const INCHES_PER_FOOT = 12;

function sayFeet(inches: number): string {
  const rounded = Math.round(inches * 1000) / 1000;
  const feet = Math.floor(rounded / INCHES_PER_FOOT);
  const rest = rounded - feet * INCHES_PER_FOOT;
  if (feet === 0) return partOf(rounded / INCHES_PER_FOOT, "foot", "feet");
  const whole = counted(feet, "foot", "feet");
  return rest === 0 ? whole : `${whole} ${counted(rest, "inch", "inches")}`;
}

const DURATIONS: readonly [ms: number, one: string, many: string][] = [
  [3_600_000, "hour", "hours"],
  [60_000, "minute", "minutes"],
  [1000, "second", "seconds"],
];

/** In the largest unit of which it is a whole number, or else in seconds. */
export function sayDuration(ms: number): string {
  const [size, one, many] = DURATIONS.find(([unit]) => ms % unit === 0) ?? [
    1000,
    "second",
    "seconds",
  ];
  return counted(ms / size, one, many);
}

/** @param celsius degrees */
export const sayTemperature = (celsius: number): string =>
  `${celsius < 0 ? "minus " : ""}${sayNumber(Math.abs(celsius))} degrees`;
