/** The items no phrase took, without those that may stand beside one. */
import type { Piece } from "./match/cover.ts";
import { type Item, rowOf } from "./match/items.ts";
import { isPassedOver } from "./text/around.ts";

export function leftOver(items: readonly Item[], taken: readonly Piece[]): Item[] {
  const over: Item[] = [];
  let from = 0;
  for (const piece of [...taken, undefined]) {
    const to = piece?.from ?? items.length;
    over.push(...unexcused(items.slice(from, to), from > 0, piece !== undefined));
    from = piece?.to ?? to;
  }
  return over;
}

/** Whether words between two phrases may all be passed over. */
export const isExcused = (gap: readonly Item[]): boolean => unexcused(gap, true, true).length === 0;

const unexcused = (gap: readonly Item[], isAfter: boolean, isBefore: boolean): readonly Item[] =>
  isPassedOver(rowOf(gap), isAfter, isBefore) ? [] : gap;
