/**
 * The entries of a session, laid out to be small: by kind, each field a column of whole numbers in
 * which 0 stands for "not said". Numbers of one sort standing together squeeze far better than
 * entries one after another.
 */
import type { EntryStatement } from "../../log/event.ts";
import type { Codec } from "./codecs.ts";
import * as codecs from "./codecs.ts";

export type Kind = Exclude<EntryStatement["kind"], "remind">;

/** One kind's columns, in the order of `FIELDS`; 0 for one in which nothing is said. */
export type Columns = (number[] | 0)[];

type Fields = Record<string, unknown>;

/** A kind's letter in the list of entries, and its fields. The unit comes first: others need it. */
interface Layout {
  letter: string;
  fields: readonly (readonly [name: string, codec: Codec])[];
}

const { word, whole, flag, weight, length, shift, tenth, unit } = codecs;

/** Never reordered, and added to only at a row's end: links that are out there must stay readable. */
const LAYOUTS: Readonly<Record<Kind, Layout>> = {
  fish: {
    letter: "f",
    fields: [
      ["unit", unit],
      ["species", word],
      ["weightG", weight],
      ["lengthMm", length],
      ["count", whole],
      ["approx", flag],
      ["foul", flag],
    ],
  },
  loss: {
    letter: "l",
    fields: [
      ["cause", word],
      ["species", word],
    ],
  },
  sign: { letter: "s", fields: [["sort", word]] },
  drop: { letter: "d", fields: [] },
  feed: {
    letter: "e",
    fields: [
      ["unit", unit],
      ["times", whole],
      ["amountG", weight],
      ["bait", word],
      ["baitNote", word],
      ["how", word],
    ],
  },
  change: {
    letter: "c",
    fields: [
      ["unit", unit],
      ["rig", word],
      ["depthMm", length],
      ["depthByMm", shift],
      ["distanceMm", length],
      ["distanceByMm", shift],
      ["hook", whole],
      ["bait", word],
      ["baitNote", word],
      ["lashMm", length],
      ["lashByMm", shift],
    ],
  },
  net: { letter: "n", fields: [["number", whole]] },
  conditions: {
    letter: "w",
    fields: [
      ["wind", word],
      ["sky", word],
      ["waterC", tenth],
      ["airC", tenth],
    ],
  },
  note: { letter: "t", fields: [["text", word]] },
  session: { letter: "a", fields: [["act", word]] },
};

const KINDS = Object.keys(LAYOUTS) as Kind[];

export const letterOf = (kind: Kind): string => LAYOUTS[kind].letter;

/** Undefined for a letter that stands for nothing. */
export const kindOf = (letter: string): Kind | undefined =>
  KINDS.find((kind) => LAYOUTS[kind].letter === letter);

/** @param words grows by the words that are not in it yet */
export function toColumns(kind: Kind, statements: readonly Fields[], words: string[]): Columns {
  return LAYOUTS[kind].fields.map(([name, codec]) => {
    const column = statements.map((statement) => {
      const value = statement[name];
      return value === undefined ? 0 : codec.pack(value, { words, unit: statement.unit });
    });
    return column.some((cell) => cell !== 0) ? column : 0;
  });
}

/** The statement in one row of a kind's columns; what the cells hold is not checked here. */
export function fromColumns(
  kind: Kind,
  columns: Columns,
  row: number,
  words: readonly string[],
): Fields {
  const said: Fields = { kind };
  for (const [place, [name, codec]] of LAYOUTS[kind].fields.entries()) {
    const column = columns[place];
    const cell = column ? (column[row] ?? 0) : 0;
    if (cell !== 0) said[name] = codec.unpack(cell, { words, unit: said.unit });
  }
  return said;
}
