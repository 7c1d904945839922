/** Words that count things, and ordinals: "a brace", "half a dozen", "third", "3rd". */
import { SMALL_NUMBERS, TENS_NUMBERS } from "./number.ts";

interface CountRead {
  value: number;
  next: number;
}

const COUNTS: readonly [words: string, count: number][] = [
  ["half a dozen", 6],
  ["a couple more", 2],
  ["couple more", 2],
  ["a couple of", 2],
  ["couple of", 2],
  ["a brace of", 2],
  ["brace of", 2],
  ["a brace", 2],
  ["a pair of", 2],
  ["a half dozen", 6],
  ["half dozen", 6],
  ["pair of", 2],
  ["a dozen", 12],
  ["dozen", 12],
  ["a couple", 2],
  ["couple", 2],
];

const SPLIT_COUNTS = COUNTS.map(([words, value]) => ({ words: words.split(" "), value }));

/** The counting words that start at word `i`. */
export function readCount(words: readonly string[], i: number): CountRead | undefined {
  const found = SPLIT_COUNTS.find((count) => count.words.every((word, k) => words[i + k] === word));
  return found && { value: found.value, next: i + found.words.length };
}

const IRREGULAR: Readonly<Record<string, string>> = {
  first: "one",
  second: "two",
  third: "three",
  fifth: "five",
  eighth: "eight",
  ninth: "nine",
  twelfth: "twelve",
};

/** The ordinal that starts at word `i`, up to 99. */
export function readOrdinal(words: readonly string[], i: number): CountRead | undefined {
  const word = words[i] ?? "";
  if (word === "first" && !isNumbered(words, i + 1)) return undefined;
  const printed = /^(\d{1,4})(?:st|nd|rd|th)$/.exec(word);
  if (printed) return { value: Number(printed[1]), next: i + 1 };
  const tens = TENS_NUMBERS.get(word);
  const ones = ordinalBelowTwenty(words[i + 1] ?? "");
  if (tens !== undefined) {
    return ones !== undefined && ones < 10 ? { value: tens + ones, next: i + 2 } : undefined;
  }
  const value = ordinalBelowTwenty(word) ?? TENS_NUMBERS.get(word.replace(/ieth$/, "y"));
  return value === undefined ? undefined : { value, next: i + 1 };
}

/** "the first net", but not "first bite" and "first fish of the day". */
const isNumbered = (words: readonly string[], i: number): boolean =>
  /^(net|keepnet|rig|fish|one)$/.test(words[i] ?? "") && words[i + 1] !== "of";

const ordinalBelowTwenty = (word: string): number | undefined =>
  SMALL_NUMBERS.get(IRREGULAR[word] ?? (word.endsWith("th") ? word.slice(0, -2) : ""));
