/** Reading a phrase: how well, how fast, and beside general-purpose readers of quantities. */
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { createReader, type Reader } from "../../../grammar/read.ts";
import {
  type Figures,
  type Measured,
  type Options,
  ofHundred,
  rounded,
  type Table,
} from "../part.ts";
import { interleaved, median, spread, type Timed, timeOf } from "../times.ts";
import { made, type Outcome, outcomeOf, type Said, sampledPhrases, tables } from "./lines.ts";
import { AS_STATED, type Noise, QUIET } from "./noise.ts";
import { isRight, makePeers, PEERS } from "./peers.ts";
import { FORMS } from "./quantities.ts";

export const title = "Reading a phrase";

const SAMPLED = 2000;
/** Of each form of a quantity, so many are drawn. */
const OF_A_FORM = 20;
const ROUNDS = 5;

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

function held(reader: Reader): { table: Table; figures: Figures } {
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

const milliseconds = ({ median: half, p95, p99 }: Timed) =>
  [half, p95, p99].map((ms) => rounded(ms, 3));

function times(reader: Reader, phrases: readonly Said[], firstMs: number, seed: number): Table {
  const of = (noise: Noise) =>
    milliseconds(
      spread(made(phrases, noise, seed).map(({ line }) => timeOf(() => reader.read([line])))),
    );
  const talk = tables(reader).talk ?? [];
  return {
    caption: `Milliseconds a line, one read each; a reader made and its first phrase read, in a warm process: ${rounded(firstMs, 0)} ms.`,
    head: ["lines", "median", "p95", "p99"],
    rows: [
      ["as drawn", ...of(QUIET)],
      ["all noise as stated", ...of(AS_STATED)],
      ["talk", ...milliseconds(spread(talk.map(({ line }) => timeOf(() => reader.read([line])))))],
    ],
  };
}

/** Accuracy and time of each peer on each form of a quantity. */
export function besidePeers(seed: number, ofAForm = OF_A_FORM, rounds = ROUNDS) {
  const peers = makePeers();
  const random = seededRandom(seed);
  const rows = FORMS.map((form) => {
    const drawn = Array.from({ length: ofAForm }, () => form.draw(random));
    const right = PEERS.map(
      (name) => drawn.filter(({ text, value }) => isRight(peers[name](text, form), value)).length,
    );
    const runs = Object.fromEntries(
      PEERS.map((name) => [name, (text: string) => peers[name](text, form)]),
    ) as Record<(typeof PEERS)[number], (text: string) => unknown>;
    const taken = interleaved(
      runs,
      drawn.map(({ text }) => text),
      rounds,
    );
    return { form, right, ms: PEERS.map((name) => median(taken[name])) };
  });
  const [ours, first] = [0, 1].map((place) =>
    median(rows.map(({ ms }) => ms[place] ?? Number.NaN)),
  );
  const worse = rows.filter(({ right: [own = 0, ...others] }) =>
    others.some((other) => other > own),
  );
  const table: Table = {
    caption: `Quantities by form, ${ofAForm} of each: right of 100, and median milliseconds. pegscribe reads a whole phrase ("carp …", "depth …"), the others the quantity alone; those find parts, which are added up for them, and compromise is told the units.`,
    head: ["form", ...PEERS, ...PEERS.map((name) => `${name}, ms`)],
    rows: rows.map(({ form, right, ms }) => [
      form.name,
      ...right.map((count) => ofHundred(count, ofAForm)),
      ...ms.map((one) => rounded(one, 3)),
    ]),
  };
  const figures: Figures = {
    "quantities by form: right, of 100":
      (100 * rows.reduce((sum, { right }) => sum + (right[0] ?? 0), 0)) / (ofAForm * FORMS.length),
    "forms that another reader reads better": worse.length,
    "time of a whole phrase, of recognizers-text's for the quantity": (ours ?? 0) / (first ?? 1),
  };
  return { table, figures };
}

export function measure({ seed }: Options): Measured {
  const firstMs = timeOf(() => createReader().read(["carp two pounds eight"]));
  const reader = createReader();
  const phrases = sampledPhrases(reader, SAMPLED, seed);
  const onTables = held(reader);
  const noise = underNoise(reader, phrases, seed);
  const peers = besidePeers(seed);
  return {
    tables: [times(reader, phrases, firstMs, seed), onTables.table, noise.table, peers.table],
    figures: { ...onTables.figures, ...noise.figures, ...peers.figures },
  };
}
