/**
 * Sizes that are said after several fish, one for each: "two carp, three pounds and four pounds",
 * "carp and an F1, four pounds and two pounds".
 */
import type { Item } from "../match/items.ts";
import { WEIGHT_WORDS } from "../quantity/units.ts";
import type { StatementOf } from "../statement.ts";

type Sized = Pick<StatementOf<"fish">, "species" | "weightG" | "lengthMm" | "count" | "unit">;

/** One fish for each size, where there are as many sizes as fish; otherwise the fish as they are. */
export function shareOut<T extends Sized>(fishes: readonly T[]): T[] {
  const first = fishes.findIndex(isSized);
  const sizes = fishes.slice(first);
  const names = fishes.slice(0, first + 1).flatMap(oneByOne);
  const isList = first >= 0 && sizes.length > 1 && sizes.slice(1).every(isSizeAlone);
  if (!isList || names.length !== sizes.length) return [...fishes];
  return sizes.map((size, i) => {
    const { count: _count, ...rest } = size;
    const { species } = names[i] as T;
    return { ...rest, ...(species !== undefined && { species }) } as T;
  });
}

/** Several fish of one size, and then another size: "two carp, three pounds, four pounds and five pounds". */
export const hasSpareSize = (fishes: readonly Sized[]): boolean =>
  fishes.some((fish, i) => {
    const before = fishes[i - 1];
    return isSizeAlone(fish) && before !== undefined && isSized(before) && (before.count ?? 1) > 1;
  });

const isSized = ({ weightG, lengthMm }: Sized): boolean =>
  weightG !== undefined || lengthMm !== undefined;

const isSizeAlone = (fish: Sized): boolean =>
  isSized(fish) && fish.species === undefined && fish.count === undefined;

/** More than this many are not told one by one. */
const MOST_LISTED = 10;

const oneByOne = <T extends Sized>(fish: T): T[] =>
  Array.from({ length: Math.min(fish.count ?? 1, MOST_LISTED) }, () => fish);

/**
 * The bare numbers right before the weight at `at` that with it are as many as the fish were said to
 * be, in grams: "two carp, four and five pounds".
 * @param named where the fish are named; -1 where they are not
 */
export function listedBefore(items: readonly Item[], at: number, named: number): number[] {
  const item = items[at];
  if (named < 0 || !item || !("slot" in item) || item.slot !== "weight") return [];
  const run: number[] = [];
  for (let i = at - 1; i > named; i -= 1) {
    const number = numberIn(items[i]);
    if (number === undefined) break;
    run.unshift(number);
  }
  const count = items
    .slice(0, named)
    .map(numberIn)
    .findLast((number) => number !== undefined);
  const size = WEIGHT_WORDS.get(item.value.unit)?.size ?? 0;
  return count === run.length + 1 ? run.map((number) => number * size) : [];
}

/** Whether the number at `index` is one of those. */
export function isListed(items: readonly Item[], index: number, named: number): boolean {
  const at = items.findIndex((item, i) => i > index && numberIn(item) === undefined);
  return at > index && listedBefore(items, at, named).length >= at - index;
}

const numberIn = (item: Item | undefined): number | undefined =>
  item && "slot" in item && (item.slot === "number" || item.slot === "count")
    ? item.value
    : undefined;
