/** Quantities for the ear: rounded, in the angler's units, short enough for the wind. */
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from "../../../grammar/quantity/units.ts";
import { sayName } from "../../../grammar/saying/fish.ts";
import { sayLength, sayNumber, sayWeight } from "../../../grammar/saying/quantities.ts";
import type { StatementOf } from "../../../grammar/statement.ts";
import type { Interval } from "../../analysis/estimate.ts";
import { MS_PER_HOUR, MS_PER_MINUTE } from "../../analysis/units.ts";
import { answerWords as say } from "../../words/answers.ts";
import type { Settings } from "../settings.ts";

export type Units = Pick<Settings, "weight" | "length">;

/** Whole ounces, or hundredths of a kilo. @param grams ≥ 0 */
export function weightWords(grams: number, { weight }: Units): string {
  if (weight === "kg") return `${sayNumber(Math.round(grams / 10) / 100)} kilos`;
  const ounces = Math.round(grams / GRAMS_PER_OUNCE);
  if (ounces < 16) return count(ounces, "ounce");
  return sayWeight(ounces * GRAMS_PER_OUNCE);
}

/** From here on an estimate is told in whole units: ounces would claim to know more. */
const ROUGH_FROM_G = 4 * GRAMS_PER_POUND;

/** A weight that is only reckoned, in whole pounds or half kilos from four pounds on. @param grams ≥ 0 */
export function roughWeightWords(grams: number, units: Units): string {
  const step = units.weight === "kg" ? 500 : GRAMS_PER_POUND;
  return weightWords(grams < ROUGH_FROM_G ? grams : Math.round(grams / step) * step, units);
}

/** Whole centimetres, or quarters of an inch. @param mm > 0 */
export function lengthWords(mm: number, { length }: Units): string {
  const step = length === "cm" ? 10 : 25.4 / 4;
  return sayLength(Math.round(mm / step) * step, length);
}

/** As deep, or as far out: metres from one on, where centimetres are set. @param mm > 0 */
export const depthWords = (mm: number, units: Units): string =>
  units.length === "cm" && mm >= 1000
    ? sayLength(Math.round(mm / 10) * 10, "m")
    : lengthWords(mm, units);

/**
 * A chance as odds that a listener can hold on to, never certain: no finer than the sums are good
 * for. @param chance 0 to 1
 */
export function oddsWords(chance: number): string {
  if (chance >= 0.985) return "99 in 100";
  if (chance >= 0.935) return "19 in 20";
  if (chance < 0.015) return "less than 1 in 100";
  if (chance < 0.065) return "1 in 20";
  return `${Math.round(10 * chance)} in 10`;
}

/** A wait: seconds up to two minutes, whole minutes from there. @param seconds ≥ 0 */
export const waitWords = (seconds: number): string =>
  seconds < 120
    ? count(Math.round(seconds / 5) * 5 || Math.round(seconds), "second")
    : timeWords(Math.round(seconds / 60) * MS_PER_MINUTE);

/** Whole minutes, and hours from one on. @param ms ≥ 0 */
export function timeWords(ms: number): string {
  const minutes = Math.floor(ms / MS_PER_MINUTE);
  if (minutes === 0) return "less than a minute";
  const hours = Math.floor(ms / MS_PER_HOUR);
  const over = minutes - 60 * hours;
  const parts = [hours && count(hours, "hour"), over && count(over, "minute")];
  return parts.filter(Boolean).join(" ");
}

/** The time of day where the phone is, as it is said: "20 past 10" is too long for the wind. */
export function clockWords(at: number): string {
  const date = new Date(at);
  return `${date.getHours()} ${String(date.getMinutes()).padStart(2, "0")}`;
}

/** "1 hour", "3 hours". */
export const count = (number: number, one: string, many = `${one}s`): string =>
  `${sayNumber(number)} ${number === 1 ? one : many}`;

/** Fish do not change with their number. */
export const fishWords = (number: number): string => `${sayNumber(number)} fish`;

/** "carp, 4 pounds, 40 centimetres"; "3 roach"; a fish of no kind and no size is just a fish. */
export function sizedFishWords(fish: StatementOf<"fish">, units: Units): string {
  const { species, count: many = 1, weightG, lengthMm } = fish;
  const name = species && sayName(species);
  return [
    many > 1 ? `${sayNumber(many)} ${name ?? say.fish}` : (name ?? say.aFish),
    weightG === undefined ? "" : weightWords(weightG, units),
    lengthMm === undefined ? "" : lengthWords(lengthMm, units),
  ]
    .filter(Boolean)
    .join(", ");
}

/** One decimal below ten, none above: more would be heard as more than is known. */
export const rateWords = (perHour: number): string =>
  sayNumber(perHour < 10 ? Math.round(perHour * 10) / 10 : Math.round(perHour));

/** Limits of a rate: alike in fineness, so that one is not heard as better known than the other. */
export const rateRange = (limits: Interval): string => {
  const words = limits.upper < 10 ? rateWords : (rate: number) => sayNumber(Math.round(rate));
  return say.range(words(limits.lower), words(limits.upper));
};

/** "1 and 2", "1, 2 and 3". */
export const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join() : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

/** With a capital first. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
