/** The items no phrase took, without those that may stand beside one. */
import type { Piece } from "./match/cover.ts";
import type { Item } from "./match/items.ts";
import { mayStandAfter, mayStandBefore } from "./text/around.ts";

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

/** A gap is excused whole: by what stands before it, after it, or split between the two. */
function unexcused(gap: readonly Item[], isAfter: boolean, isBefore: boolean): readonly Item[] {
  const words = gap.map((item) => ("word" in item ? item.word : `<${item.slot}>`));
  for (let split = 0; split <= words.length; split += 1) {
    const after = words.slice(0, split);
    const before = words.slice(split);
    const afterFits = after.length === 0 || (isAfter && mayStandAfter(after));
    const beforeFits = before.length === 0 || (isBefore && mayStandBefore(before));
    if (afterFits && beforeFits) return [];
  }
  return gap;
}
