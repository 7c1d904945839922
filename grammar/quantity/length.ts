/** Lengths as said: "forty centimetres", "four foot six", "a metre twenty", "half a metre". */
import type { LengthUnit } from "../statement.ts";
import { homophone, type Measure, readMeasure, unitAt } from "./measure.ts";
import { type NumberRead, readNumber } from "./number.ts";
import { LENGTH_WORDS, MM_PER_FOOT, MM_PER_INCH, WEIGHT_WORDS } from "./units.ts";

export type Length = Measure<LengthUnit>;

/** The length that starts at word `i`, in millimetres, as long as it goes. */
export function readLength(words: readonly string[], i: number): Length | undefined {
  const first = readMeasure(words, i, LENGTH_WORDS);
  if (!first || first.approx) return first;
  const size = unitAt(words, first.next - 1, LENGTH_WORDS)?.size;
  if (size === MM_PER_FOOT) return withSmaller(words, first, MM_PER_INCH, 12);
  if (size === 1000) return withSmaller(words, first, 10, 100);
  return first;
}

/** "four foot | six", "four foot | six inches", "a metre | twenty", "a metre | twenty centimetres". */
function withSmaller(
  words: readonly string[],
  length: Length,
  size: number,
  below: number,
): Length {
  const at = words[length.next] === "and" ? length.next + 1 : length.next;
  const number: NumberRead | undefined = readNumber(words, at) ?? readMisprinted(words, at);
  if (!number || number.value <= 0 || number.value >= below) return length;
  const value = length.value + number.value * size;
  if (unitAt(words, number.next, LENGTH_WORDS)?.size === size) {
    return { ...length, value, next: number.next + 1 };
  }
  const stands = at === length.next && !number.fraction && !takenByNext(words, number.next);
  return stands ? { ...length, value, next: number.next } : length;
}

const takenByNext = (words: readonly string[], i: number): boolean =>
  unitAt(words, i, LENGTH_WORDS) !== undefined ||
  unitAt(words, i, WEIGHT_WORDS) !== undefined ||
  /^(point|degrees|minutes)$/.test(words[i] ?? "");

function readMisprinted(words: readonly string[], i: number) {
  const value = homophone(words[i]);
  return value !== undefined && LENGTH_WORDS.has(words[i + 1] ?? "")
    ? { value, next: i + 1 }
    : undefined;
}
