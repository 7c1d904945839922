/** Places by weight, as a match is ranked. */
import type { Estimate } from "../../analysis/estimate.ts";
import type { Rank } from "./view.ts";

export interface Weighing {
  /** Grams, as likely passed as not reached. */
  middleG: number;
  bag: Estimate;
}

/**
 * The places of some bags, the heaviest first, in the order they came in. Bags of the same weight,
 * to a gram, share the mean of the places they take together (common practice in match fishing, no
 * source). A place is settled where no limits of another bag reach into its own: spoken weights
 * only, the scales decide.
 */
export function ranked<T extends Weighing>(weighings: readonly T[]): Map<T, Rank> {
  const sorted = [...weighings].sort((one, other) => other.middleG - one.middleG);
  const settled = settledAmong(sorted);
  const ranks = new Map<T, Rank>();
  for (let from = 0; from < sorted.length; ) {
    const to = endOfTie(sorted, from);
    // Places count from 1: those from `from + 1` to `to`.
    const place = (from + 1 + to) / 2;
    for (let at = from; at < to; at += 1) {
      const one = sorted[at];
      if (one) ranks.set(one, { place, of: sorted.length, settled: settled[at] ?? false });
    }
    from = to;
  }
  return ranks;
}

const gramsOf = (one: Weighing | undefined): number => Math.round(one?.middleG ?? 0);

function endOfTie(sorted: readonly Weighing[], from: number): number {
  let to = from + 1;
  while (to < sorted.length && gramsOf(sorted[to]) === gramsOf(sorted[from])) to += 1;
  return to;
}

/** Limits that only touch do not overlap: bags that were both weighed, or are both empty, are known. */
function settledAmong(sorted: readonly Weighing[]): boolean[] {
  const settled = sorted.map(() => true);
  let leastAbove = Number.POSITIVE_INFINITY;
  sorted.forEach(({ bag }, at) => {
    if (leastAbove < bag.upper) settled[at] = false;
    leastAbove = Math.min(leastAbove, bag.lower);
  });
  let mostBelow = Number.NEGATIVE_INFINITY;
  for (let at = sorted.length - 1; at >= 0; at -= 1) {
    const { bag } = sorted[at] as Weighing;
    if (mostBelow > bag.lower) settled[at] = false;
    mostBelow = Math.max(mostBelow, bag.upper);
  }
  return settled;
}
