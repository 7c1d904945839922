/** Several statements in one breath. */
import type { Fsg } from "./fsg.ts";

/** Lets another sentence follow each. @param chance of going on after one */
export const withMore = (fsg: Fsg, chance: number): Fsg => ({
  ...fsg,
  arcs: [...fsg.arcs, { from: fsg.final, to: fsg.start, chance }],
});
