/** A word one letter away from a word of the trade, as cold thumbs and strange ears make them. */
import { isQuantityWord } from "../quantity/words.ts";
import { BAITS } from "./baits.ts";
import { TRADE_WORDS } from "./misprints.ts";
import { SPECIES } from "./species.ts";

const WORDS: ReadonlySet<string> = new Set([
  ...TRADE_WORDS.filter((word) => !isQuantityWord(word)),
  ...[...SPECIES, ...BAITS].flatMap(({ names }) => names.filter((name) => !name.includes(" "))),
  ..."twice nudge nudging feeding catapult potted hooklength wind missed snapped pulled".split(" "),
]);

/** Shorter words have too many neighbours. */
const SHORTEST = 4;

/** The trade's words that differ from this one by one letter put in, left out, changed or swapped. */
export function nearMisses(word: string): string[] {
  if (word.length < SHORTEST || WORDS.has(word) || !/^[a-z]+$/.test(word)) return [];
  return [...WORDS].filter((known) => known.length >= SHORTEST && isOneOff(word, known));
}

/** Levenshtein distance of one, or two neighbouring letters swapped. */
function isOneOff(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start += 1;
  const restA = a.slice(start);
  const restB = b.slice(start);
  if (a.length > b.length) return restA.slice(1) === restB;
  if (a.length < b.length) return restA === restB.slice(1);
  const isSwapped = restA[0] === restB[1] && restA[1] === restB[0];
  return restA.slice(1) === restB.slice(1) || (isSwapped && restA.slice(2) === restB.slice(2));
}
