/**
 * Signs that words of a line were not heard. What is left then often makes sense, and means
 * something else: "eleven and a half metres" as "and a half metres", "how many have I missed" as
 * "how many I missed". Such a line is put up for a look.
 */
import type { Piece } from "./match/cover.ts";
import type { Item } from "./match/items.ts";
import { LENGTH_WORDS, WEIGHT_WORDS } from "./quantity/units.ts";
import type { Statement } from "./statement.ts";
import type { Token } from "./text/tokens.ts";

/** Why a line that reads well may not be whole, in words; mostly nothing. */
export function signsOfLostWords(
  pieces: readonly Piece[],
  items: readonly Item[],
  tokens: readonly Token[],
): string[] {
  const isCut = items.some((item) => isCutMeasure(item, tokens));
  const isTorn = pieces.some((piece, i) => isTornOff(piece, pieces[i - 1], items));
  return isCut || isTorn ? ["a word may be missing"] : [];
}

/** "and a half metres" and "a point six kilos" have lost the number in front. */
function isCutMeasure(item: Item, tokens: readonly Token[]): boolean {
  if (!("slot" in item) || (item.slot !== "weight" && item.slot !== "length")) return false;
  const words = tokens.slice(item.from, item.to).map(({ word }) => word);
  if (words[0] === "point") return /^an?$/.test(tokens[item.from - 1]?.word ?? "");
  return BARE_FRACTION.test(words.slice(0, -1).join(" ")) && isPlural(words.at(-1) ?? "");
}

const BARE_FRACTION = /^((a |one )?(half|quarter)|(three |3 )quarters)$/;

const isPlural = (unit: string): boolean =>
  /^feet$|..s$/.test(unit) && (WEIGHT_WORDS.has(unit) || LENGTH_WORDS.has(unit));

/**
 * A fish with no size, a loss or a sign right after a question is the rest of it; and such a fish
 * after a loss is what was lost, unless it is told that it was caught.
 */
function isTornOff(piece: Piece, before: Piece | undefined, items: readonly Item[]): boolean {
  const [first] = before?.stated.statements ?? [];
  const [next] = piece.stated.statements;
  if (!first || !next) return false;
  if (first.kind === "ask") return isBareFish(next) || next.kind === "loss" || next.kind === "sign";
  return (
    first.kind === "loss" && isBareFish(next) && !saysCaught(items.slice(piece.from, piece.to))
  );
}

const isBareFish = (statement: Statement): boolean =>
  statement.kind === "fish" &&
  statement.weightG === undefined &&
  statement.lengthMm === undefined &&
  statement.count === undefined;

const CAUGHT = /^(got|had|caught|landed|netted|another|more)$/;

const saysCaught = (items: readonly Item[]): boolean =>
  items.some((item) => "word" in item && CAUGHT.test(item.word));
