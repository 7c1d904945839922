/** Fish counted and weighed, over all and net by net. */
import type { StatementOf } from "../../grammar/statement.ts";
import type { Net } from "./session.ts";

export interface Catch {
  count: number;
  spokenG: number;
  unweighed: number;
}

export const NOTHING_CAUGHT: Catch = { count: 0, spokenG: 0, unweighed: 0 };

export const emptyNet = (number: number): Net => ({ number, ...NOTHING_CAUGHT });

/** How many fish one statement is. */
export const fishIn = (fish: StatementOf<"fish">): number => fish.count ?? 1;

/** A tally with the fish added; grams are one fish's, so they count for each. */
export function addFish<T extends Catch>(tally: T, fish: StatementOf<"fish">): T {
  const count = fishIn(fish);
  const grams = fish.weightG === undefined ? 0 : fish.weightG * count;
  return {
    ...tally,
    count: tally.count + count,
    spokenG: tally.spokenG + grams,
    unweighed: tally.unweighed + (fish.weightG === undefined ? count : 0),
  };
}
