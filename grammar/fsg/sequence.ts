/** Several statements in one breath. */
import type { Fsg } from "./fsg.ts";

/** What may be said between two statements, and how often beside a mere pause, which counts once. */
const JOINTS: readonly (readonly [word: string, share: number])[] = [
  ["and", 0.3],
  ["then", 0.1],
];

/** Lets another sentence follow each. @param chance of going on after one */
export const withMore = (fsg: Fsg, chance: number): Fsg => {
  const again = { from: fsg.final, to: fsg.start, chance };
  const joined = JOINTS.map(([word, share]) => ({
    ...again,
    chance: chance * share,
    word,
  }));
  return { ...fsg, arcs: [...fsg.arcs, again, ...joined] };
};
