/** The words that quantities are made of. */
import { SMALL_NUMBERS, TENS_NUMBERS } from "./number.ts";
import { LENGTH_WORDS, WEIGHT_WORDS } from "./units.ts";

const OTHERS = new Set(
  "half quarter quarters point hundred thousand degrees degree minute minutes second seconds hour hours and".split(
    " ",
  ),
);

/** Whether the word can be part of a quantity. */
export const isQuantityWord = (word: string): boolean =>
  WEIGHT_WORDS.has(word) ||
  LENGTH_WORDS.has(word) ||
  SMALL_NUMBERS.has(word) ||
  TENS_NUMBERS.has(word) ||
  OTHERS.has(word) ||
  /^\d/.test(word);
