/**
 * Words said or printed twice: "fish fish two pounds", "two pounds pounds". A stammer and a recogniser
 * both make them, and few words make sense twice.
 */
import { homophone } from "../quantity/measure.ts";
import { SMALL_NUMBERS, TENS_NUMBERS } from "../quantity/number.ts";
import { LENGTH_WORDS, WEIGHT_WORDS } from "../quantity/units.ts";
import type { Token } from "./tokens.ts";

export interface Undoubled {
  tokens: Token[];
  /** Whether one of the doubles is a number, which may have been meant: "two two pounders". */
  numbered: boolean;
}

/** What was printed as one piece: "gotta" is two tokens, "it is" one. */
interface Piece {
  tokens: Token[];
  /** The words as printed, in lower case. */
  words: string[];
  from: number;
  to: number;
}

/**
 * The line with doubles taken as one: first those that are no numbers, then all. Empty where there
 * are none.
 */
export function undoubled(heard: string, tokens: readonly Token[]): Undoubled[] {
  const pieces = piecesOf(heard, tokens);
  const plain = withoutDoubles(heard, pieces, false);
  const all = withoutDoubles(heard, pieces, true);
  const tokensOf = (kept: readonly Piece[]) => kept.flatMap((piece) => piece.tokens);
  return [
    ...(plain.length < pieces.length ? [{ tokens: tokensOf(plain), numbered: false }] : []),
    ...(all.length < plain.length ? [{ tokens: tokensOf(all), numbered: true }] : []),
  ];
}

function piecesOf(heard: string, tokens: readonly Token[]): Piece[] {
  const pieces: Piece[] = [];
  for (const token of tokens) {
    const { from, to } = token;
    const last = pieces.at(-1);
    if (last?.from === from) last.tokens.push(token);
    else pieces.push({ tokens: [token], words: wordsOf(heard.slice(from, to)), from, to });
  }
  return pieces;
}

const wordsOf = (text: string): string[] => text.toLowerCase().split(/\s+/);

/** @param numbers whether doubled numbers are taken as one too */
function withoutDoubles(heard: string, pieces: readonly Piece[], numbers: boolean): Piece[] {
  const kept: Piece[] = [];
  pieces.forEach((piece, i) => {
    const before = kept.at(-1);
    const isNumber = isCounting(piece, pieces[i + 1]);
    if (numbers && isPairAgain(kept, piece)) kept.pop();
    else if (!before || !isDouble(heard, before, piece)) kept.push(piece);
    else if (isNumber && !(numbers && isAlone(piece, kept.at(-2), pieces[i + 1]))) kept.push(piece);
    // "it is is" keeps the pair, and so does "I I am".
    else if (piece.words.length >= before.words.length) kept[kept.length - 1] = piece;
  });
  return kept;
}

/** Beside another number a double has sense ("twenty two two", "one one five"), but "forty forty five". */
const isAlone = (piece: Piece, before: Piece | undefined, next: Piece | undefined): boolean =>
  !(before && isCounting(before, undefined)) &&
  !(next && (isCounting(next, undefined) || isScale(next)) && !isTens(piece.words[0]));

const isScale = ({ words: [word] }: Piece): boolean => word === "hundred" || word === "thousand";

const isTens = (word: string | undefined): boolean => TENS_NUMBERS.has(word ?? "");

/** The last word of one piece is the first of the next, in the same sentence. */
function isDouble(heard: string, before: Piece, piece: Piece): boolean {
  if (before.words.length > 1 && piece.words.length > 1) return false;
  return (
    before.words.at(-1) === piece.words[0] && !/[.!?]/.test(heard.slice(before.to, piece.from))
  );
}

/** "forty five forty five". */
function isPairAgain(kept: readonly Piece[], piece: Piece): boolean {
  const [tens, ones, again] = kept.slice(-3).map(({ words }) => words[0] as string);
  return isTens(tens) && SMALL_NUMBERS.has(ones ?? "") && tens === again && ones === piece.words[0];
}

/** A number, or what is printed for one before a unit. */
function isCounting({ words: [word = ""] }: Piece, next: Piece | undefined): boolean {
  const unit = next?.words[0] ?? "";
  return (
    SMALL_NUMBERS.has(word) ||
    isTens(word) ||
    /^\d/.test(word) ||
    (homophone(word) !== undefined && (WEIGHT_WORDS.has(unit) || LENGTH_WORDS.has(unit)))
  );
}
