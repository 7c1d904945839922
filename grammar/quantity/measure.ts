/**
 * A number with its unit, in the ways weights and lengths share: "two and a half pounds", "half a
 * metre", "a pound and a half", "a couple of inches", "to pounds" (misprinted), "two or three
 * pounds" (the middle, and only about).
 */
import { type NumberRead, readNumber } from "./number.ts";
import type { UnitWord } from "./units.ts";

export interface Measure<U> {
  /** Grams or millimetres. */
  value: number;
  unit: U;
  next: number;
  /** Said as a range, so the value is its middle. */
  approx?: true;
}

/** Without the noise of binary fractions: six inches are 152.4 mm, not 152.39999999999998. */
export const withoutNoise = (value: number): number => Number(value.toPrecision(15));

/** What recognisers print for a numeral where the next word is a unit. */
const HOMOPHONES: ReadonlyMap<string, number> = new Map([
  ["to", 2],
  ["too", 2],
  ["tu", 2],
  ["for", 4],
  ["fore", 4],
  ["ate", 8],
  ["won", 1],
  ["tree", 3],
  ["free", 3],
  ["sex", 6],
  ["fife", 5],
  ["tan", 10],
]);

export const homophone = (word: string | undefined): number | undefined =>
  word === undefined ? undefined : HOMOPHONES.get(word);

/** Abbreviations that are words or letters of their own; units only straight after a numeral. */
const NEEDS_NUMERAL = new Set(["in", "g", "st", "cent"]);
const NOT_AFTER_INCHES = new Set(["the", "my", "a", "this", "net", "there", "it"]);

const isNumeral = (word: string | undefined): boolean => /^[\d./]+$/.test(word ?? "");

/** The unit word at `i`, if it is one there. */
export function unitAt<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): UnitWord<U> | undefined {
  const word = words[i] ?? "";
  if (NEEDS_NUMERAL.has(word)) {
    if (!isNumeral(words[i - 1])) return undefined;
    if (word === "in" && NOT_AFTER_INCHES.has(words[i + 1] ?? "")) return undefined;
  }
  return units.get(word);
}

/** The measure that starts at `i`: one number and one unit, with a fraction before or after. */
export function readMeasure<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): Measure<U> | undefined {
  return (
    readRange(words, i, units) ??
    readCounted(words, i, units) ??
    readArticled(words, i, units) ??
    readHundredless(words, i, units)
  );
}

/** "two pounds", "half a pound", "three quarters of a pound", "to pounds", "a couple of pounds". */
function readCounted<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): Measure<U> | undefined {
  const number = readNumber(words, i) ?? readCouple(words, i) ?? readMisprinted(words, i);
  if (!number) return undefined;
  const at = number.value < 1 ? skipOfA(words, number.next) : number.next;
  const unit = unitAt(words, at, units);
  return unit && withHalf(words, number.value, unit, at + 1);
}

/** "a pound", "an inch", "pound and a half". */
function readArticled<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): Measure<U> | undefined {
  const articled = words[i] === "a" || words[i] === "an" || words[i] === "another";
  const at = articled ? i + 1 : i;
  const unit = unitAt(words, at, units);
  if (!unit || unit.size === 1) return undefined;
  const measure = withHalf(words, 1, unit, at + 1);
  const bare = STANDS_BARE.has(words[at] ?? "") || COMPARED.has(words[at + 1] ?? "");
  return articled || bare || measure.next > at + 1 ? measure : undefined;
}

/** "foot shallower", "metre further out". */
const COMPARED = new Set("shallower deeper further closer nearer longer shorter out".split(" "));

/** "pound perch", "kilo carp". */
const STANDS_BARE = new Set(["pound", "kilo", "ounce", "pounder"]);

/** "one fifty grams", "one twenty centimetres": the hundred goes unsaid, up to three metres. */
function readHundredless<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): Measure<U> | undefined {
  if (words[i] === "one" && NAMING_ONE.has(words[i - 1] ?? "")) return undefined;
  const hundreds = readNumber(words, i);
  const rest = hundreds && readNumber(words, hundreds.next);
  const unit = rest && unitAt(words, rest.next, units);
  if (!unit || !isDigit(hundreds.value) || rest.value < 10 || rest.value > 99) return undefined;
  const isLong = unit.size === 10 && hundreds.value > 2;
  if (isLong || (unit.size !== 1 && unit.size !== 10)) return undefined;
  return {
    value: (hundreds.value * 100 + rest.value) * unit.size,
    unit: unit.unit,
    next: rest.next + 1,
  };
}

const isDigit = (value: number): boolean => Number.isInteger(value) && value > 0 && value < 10;

/** "fish five to ten ounces" gives a fish its weight. */
const NUMBERED = new Set(["fish", "number", "rig", "net"]);

/** In "the last one to two pounds" and "lost one, ten centimetres shallower" the one is no number. */
const NAMING_ONE = new Set(
  "last that this the hooked lost missed another got next good nice big small had landed caught".split(
    " ",
  ),
);

/** "two to three pounds", "two or three pounds". */
function readRange<U>(
  words: readonly string[],
  i: number,
  units: ReadonlyMap<string, UnitWord<U>>,
): Measure<U> | undefined {
  if (words[i] === "one" && NAMING_ONE.has(words[i - 1] ?? "")) return undefined;
  if (NUMBERED.has(words[i - 1] ?? "")) return undefined;
  const low = readNumber(words, i);
  if (!low || low.fraction || (words[low.next] !== "to" && words[low.next] !== "or")) {
    return undefined;
  }
  const high = readNumber(words, low.next + 1);
  const unit = high && unitAt(words, high.next, units);
  if (!unit || high.value <= low.value || high.value > 2 * low.value) return undefined;
  const middle = (low.value + high.value) / 2;
  return { value: middle * unit.size, unit: unit.unit, next: high.next + 1, approx: true };
}

/** "… and a half" after the unit. */
function withHalf<U>(
  words: readonly string[],
  value: number,
  unit: UnitWord<U>,
  next: number,
): Measure<U> {
  const joined = words[next] === "and" ? readNumber(words, next + 1) : undefined;
  return joined?.fraction && !isUnitAfter(words, joined.next)
    ? { value: (value + joined.value) * unit.size, unit: unit.unit, next: joined.next }
    : { value: value * unit.size, unit: unit.unit, next };
}

/** "and half an ounce" is not "and a half". */
const isUnitAfter = (words: readonly string[], i: number): boolean =>
  words[i] === "a" || words[i] === "an" || words[i] === "of";

function skipOfA(words: readonly string[], i: number): number {
  const of = words[i] === "of" ? i + 1 : i;
  return words[of] === "a" || words[of] === "an" ? of + 1 : of;
}

function readCouple(words: readonly string[], i: number): NumberRead | undefined {
  const at = words[i] === "a" ? i + 1 : i;
  if (words[at] !== "couple") return undefined;
  return { value: 2, next: words[at + 1] === "of" ? at + 2 : at + 1 };
}

function readMisprinted(words: readonly string[], i: number): NumberRead | undefined {
  const value = homophone(words[i]);
  if (value === undefined) return undefined;
  const half = words[i + 1] === "and" ? readNumber(words, i + 2) : undefined;
  return half?.fraction ? { value: value + half.value, next: half.next } : { value, next: i + 1 };
}
