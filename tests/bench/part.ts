/** What a part of the bench gives. */
import { type Row, table } from "../simulation/table.ts";

export interface Table {
  caption: string;
  head: Row;
  rows: readonly Row[];
}

export interface Options {
  /** Of everything that is drawn. */
  seed: number;
}

/** Numbers by what they are of, with their unit in the name. */
export type Figures = Readonly<Record<string, number>>;

export interface Measured {
  tables: readonly Table[];
  /** Those that come out alike on any machine, for `budgets.json` to hold. */
  figures: Figures;
}

export interface Part {
  title: string;
  measure(options: Options): Promise<Measured> | Measured;
}

export const print = ({ caption, head, rows }: Table): string =>
  `${caption}\n\n${table(head, rows)}\n`;

/** @param digits behind the point */
export const rounded = (value: number, digits = 2): string =>
  Number.isNaN(value) ? "–" : value.toFixed(digits);

/** A share as so many of a hundred. */
export const ofHundred = (hits: number, of: number): string => rounded((100 * hits) / of, 1);
