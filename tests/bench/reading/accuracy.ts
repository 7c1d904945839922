/** How many lines are read as they were meant. */
import type { Reader } from "../../../grammar/read.ts";
import { type Figures, ofHundred, type Table } from "../part.ts";
import { made, type Outcome, outcomeOf, type Said, tables } from "./lines.ts";
import { AS_STATED, type Noise, QUIET } from "./noise.ts";

/** Each kind of noise alone, then all of them as stated, then all twice as often. */
const NOISES: Readonly<Record<string, Noise>> = {
  "as drawn": QUIET,
  "numbers in digits": { ...QUIET, digits: 1 },
  "other spellings of units": { ...QUIET, units: 1 },
  "1 in 10 words as one that sounds alike": { ...QUIET, homophones: 0.1 },
  "1 in 50 words doubled": { ...QUIET, doubled: 0.02 },
  "1 in 50 words dropped": { ...QUIET, dropped: 0.02 },
  "all as stated": AS_STATED,
  "all twice as often": {
    ...{ digits: 0.6, units: 0.6, homophones: 0.1, doubled: 0.02, dropped: 0.02 },
  },
};

const percents = ({ lines, right, wrong, doubted, ignored }: Outcome) =>
  [right, wrong, doubted, ignored].map((count) => ofHundred(count, lines));

const OUTCOMES = ["right", "logged wrong", "wrong, for a look", "passed over"];

/** How the lines of the tables are read. */
export function held(reader: Reader): { table: Table; figures: Figures } {
  const outcomes = Object.entries(tables(reader)).map(
    ([name, said]) => [name, outcomeOf(reader, said)] as const,
  );
  return {
    table: {
      caption:
        "Lines of the tables in tests/grammar/tables, of 100 (of talk, passed over is right):",
      head: ["table", "lines", ...OUTCOMES],
      rows: outcomes.map(([name, outcome]) => [name, outcome.lines, ...percents(outcome)]),
    },
    figures: Object.fromEntries(
      outcomes.map(([name, { right, lines }]) => [`${name}: right, of 100`, (100 * right) / lines]),
    ),
  };
}

/** How lines drawn from the grammar are read after a recogniser's noise. */
export function underNoise(reader: Reader, phrases: readonly Said[], seed: number) {
  const outcomes = Object.entries(NOISES).map(
    ([name, noise]) => [name, outcomeOf(reader, made(phrases, noise, seed))] as const,
  );
  return {
    table: {
      caption: `${phrases.length} phrases drawn from the grammar, of 100:`,
      head: ["noise", ...OUTCOMES],
      rows: outcomes.map(([name, outcome]) => [name, ...percents(outcome)]),
    },
    figures: Object.fromEntries(
      outcomes.flatMap(([name, { right, wrong, lines }]) => [
        [`${name}: right, of 100`, (100 * right) / lines],
        [`${name}: logged wrong, of 100`, (100 * wrong) / lines],
      ]),
    ),
  };
}
