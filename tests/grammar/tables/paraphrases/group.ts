import type { Statement } from "../../../../grammar/statement.ts";

/**
 * Groups of sentences that say the same. `means` holds what each sentence of `said` states, in
 * grams, millimetres, degrees Celsius and milliseconds; `unit` is left out, and `"*"` stands for
 * any text that is not empty.
 */
export type Paraphrases = readonly { means: Statement[]; said: readonly string[] }[];

/** Grams: Weights and Measures Act 1985, Schedule 1. */
export const LB = 453.59237;
export const OZ = LB / 16;

/** Millimetres: international yard and pound agreement 1959. */
export const IN = 25.4;
export const FT = 12 * IN;

/** Milliseconds. */
export const SEC = 1000;
export const MIN = 60 * SEC;
