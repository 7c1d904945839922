/** Weights as said: "two pounds eight", "a two pounder", "one kilo two hundred", "half a pound". */
import type { WeightUnit } from "../statement.ts";
import { homophone, type Measure, readMeasure, unitAt } from "./measure.ts";
import { type NumberRead, readNumber } from "./number.ts";
import {
  GRAMS_PER_DRAM,
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  GRAMS_PER_STONE,
  LENGTH_WORDS,
  WEIGHT_WORDS,
} from "./units.ts";

export type Weight = Measure<WeightUnit>;

/** The weight that starts at word `i`, in grams, as long as it goes. */
export function readWeight(words: readonly string[], i: number): Weight | undefined {
  const first = readMeasure(words, i, WEIGHT_WORDS);
  if (!first || first.approx) return first;
  return withSmaller(words, first, sizeBefore(words, first.next));
}

const sizeBefore = (words: readonly string[], next: number): number =>
  unitAt(words, next - 1, WEIGHT_WORDS)?.size ?? 0;

interface Smaller {
  size: number;
  below: number;
  /** Whether this many may be said without their unit: "two pounds eight". */
  bare(count: number): boolean;
}

/** What may follow each unit. */
const SMALLER: ReadonlyMap<number, Smaller> = new Map<number, Smaller>([
  [GRAMS_PER_STONE, { size: GRAMS_PER_POUND, below: 14, bare: () => false }],
  [GRAMS_PER_POUND, { size: GRAMS_PER_OUNCE, below: 16, bare: (count) => count < 16 }],
  [GRAMS_PER_OUNCE, { size: GRAMS_PER_DRAM, below: 16, bare: () => false }],
  [1000, { size: 1, below: 1000, bare: (count) => count >= 100 }],
]);

/** "two pounds | eight", "two pounds | and eight ounces", "a stone | two pounds | three ounces". */
function withSmaller(words: readonly string[], weight: Weight, size: number): Weight {
  const smaller = SMALLER.get(size);
  if (!smaller) return weight;
  const at = words[weight.next] === "and" ? weight.next + 1 : weight.next;
  const number = readNumber(words, at) ?? readArticle(words, at) ?? readMisprinted(words, at);
  if (!number || number.value <= 0 || number.value >= smaller.below) return weight;
  const unit = unitAt(words, number.next, WEIGHT_WORDS);
  if (unit?.size === smaller.size) {
    const sum = {
      ...weight,
      value: weight.value + number.value * unit.size,
      next: number.next + 1,
    };
    return withSmaller(words, sum, unit.size);
  }
  const stands = smaller.bare(number.value) && at === weight.next && !number.fraction;
  return stands && !takenByNext(words, number.next)
    ? { ...weight, value: weight.value + number.value * smaller.size, next: number.next }
    : weight;
}

/** "a pound and an ounce". */
const readArticle = (words: readonly string[], i: number): NumberRead | undefined =>
  words[i] === "an" && words[i + 1] === "ounce" ? { value: 1, next: i + 1 } : undefined;

/** "two pounds, ten centimetres shallower": the ten belongs to what follows. */
const takenByNext = (words: readonly string[], i: number): boolean =>
  isPronoun(words, i - 1) ||
  unitAt(words, i, WEIGHT_WORDS) !== undefined ||
  unitAt(words, i, LENGTH_WORDS) !== undefined ||
  /^(point|degrees|minutes)$/.test(words[i] ?? "");

/** "one four pounds, one five pounds": the second one is no ounce. */
function isPronoun(words: readonly string[], i: number): boolean {
  const number = words[i] === "one" ? readNumber(words, i + 1) : undefined;
  return number !== undefined && unitAt(words, number.next, WEIGHT_WORDS) !== undefined;
}

/** "two pounds for ounces"; without the unit only where the line ends with it. */
function readMisprinted(words: readonly string[], i: number): NumberRead | undefined {
  const value = homophone(words[i]);
  const sure = words[i + 1] === undefined || WEIGHT_WORDS.has(words[i + 1] ?? "");
  return value !== undefined && sure ? { value, next: i + 1 } : undefined;
}
