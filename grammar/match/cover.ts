/**
 * Which phrases an utterance is made of: of all stretches the patterns match, those that leave the
 * fewest words over, in as few phrases as possible; then the
 * one that is surest; then the one whose first phrases reach furthest,
 * and then the one whose phrases stand earlier in the list.
 */
import { type Phrase, Said, type Stated } from "../phrases/phrase.ts";
import { type Aside, findAsides } from "../text/around.ts";
import type { Stretch } from "./compromise.ts";
import { type Item, rowOf } from "./items.ts";
import type { Find } from "./remembering.ts";

/** A pattern and the phrase it belongs to. */
export interface PatternEntry {
  phrase: Phrase;
  /** The pattern's place among the phrase's own. */
  pattern: number;
  /** The phrase's place among all; smaller wins. */
  rank: number;
}

/** A phrase found in the utterance, over a half-open range of items. */
export interface Piece extends PatternEntry {
  from: number;
  to: number;
  stated: Stated;
}

export function cover(
  items: readonly Item[],
  find: Find,
  patterns: readonly PatternEntry[],
): Piece[] {
  const row = rowOf(items);
  const asides = findAsides(row);
  const stretches = find(row);
  const chosen = choose(statedPieces(stretches, items, patterns), asides, row.length);
  if (isPlain(chosen, row.length)) return chosen;
  const all = [...stretches, ...cutStretches(stretches, row, find)];
  return choose(statedPieces(all, items, patterns), asides, row.length);
}

/** Every item is taken and nothing is doubtful, so that no other choice could be better. */
const isPlain = (pieces: readonly Piece[], length: number): boolean =>
  pieces.reduce((taken, { from, to }) => taken + to - from, 0) === length &&
  pieces.every(({ stated }) => !stated.doubts?.length);

/**
 * A greedy pattern can swallow the beginning of the next phrase, and the library does not give
 * back. So the row is also matched in two halves at every place where one stretch starts or ends
 * inside another.
 */
function cutStretches(
  stretches: readonly Stretch[],
  row: readonly string[],
  find: Find,
): Stretch[] {
  const ends = new Set(stretches.flatMap(({ from, to }) => [from, to]));
  const cuts = [...ends].filter((at) => stretches.some(({ from, to }) => from < at && at < to));
  return cuts.flatMap((at) => [
    ...find(row.slice(0, at)),
    ...find(row.slice(at)).map(({ id, from, to }) => ({ id, from: from + at, to: to + at })),
  ]);
}

function statedPieces(
  stretches: readonly Stretch[],
  items: readonly Item[],
  patterns: readonly PatternEntry[],
): Piece[] {
  const seen = new Set<string>();
  return stretches.flatMap(({ id, from, to }) => {
    const entry = patterns[id];
    const key = `${id} ${from} ${to}`;
    if (!entry || seen.has(key)) return [];
    seen.add(key);
    const stated = entry.phrase.states(new Said(items.slice(from, to)));
    return stated ? [{ ...entry, from, to, stated }] : [];
  });
}

interface Best {
  covered: number;
  pieces: Piece[];
  rank: number;
  doubts: number;
}

/** What counts only in a correction is the last thing to take a line for. */
const doubtsIn = ({ stated }: Piece): number =>
  (stated.doubts?.length ?? 0) + (stated.onlyCorrects ? 2 : 0);

/**
 * A word passed over is nearly as good as one that a phrase takes. Whole numbers, since fractions
 * add up to something else in another order, and a choice as good would be passed over.
 */
const [TAKEN_WORTH, ASIDE_WORTH] = [10, 9];

/** Weighted interval scheduling: the best choice for every beginning of the row. */
function choose(pieces: readonly Piece[], asides: readonly Aside[], length: number): Piece[] {
  const best: Best[] = [{ covered: 0, pieces: [], rank: 0, doubts: 0 }];
  for (let end = 1; end <= length; end += 1) {
    let here = best[end - 1] as Best;
    for (const aside of asides) {
      if (aside.to !== end) continue;
      const before = best[aside.from] as Best;
      const candidate = { ...before, covered: before.covered + ASIDE_WORTH * (end - aside.from) };
      if (isBetter(candidate, here)) here = candidate;
    }
    for (const piece of pieces) {
      if (piece.to !== end) continue;
      const before = best[piece.from] as Best;
      const candidate = {
        covered: before.covered + TAKEN_WORTH * (piece.to - piece.from),
        pieces: [...before.pieces, piece],
        rank: before.rank + piece.rank,
        doubts: before.doubts + doubtsIn(piece),
      };
      if (isBetter(candidate, here)) here = candidate;
    }
    best.push(here);
  }
  return (best[length] as Best).pieces;
}

function isBetter(a: Best, b: Best): boolean {
  if (a.covered !== b.covered) return a.covered > b.covered;
  if (a.pieces.length !== b.pieces.length) return a.pieces.length < b.pieces.length;
  if (a.doubts !== b.doubts) return a.doubts < b.doubts;
  const differs = a.pieces.findIndex((piece, i) => piece.to !== b.pieces[i]?.to);
  if (differs >= 0) return (a.pieces[differs]?.to ?? 0) > (b.pieces[differs]?.to ?? 0);
  return a.rank < b.rank;
}
