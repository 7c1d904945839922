/**
 * Readers of plain quantities, given the same text. Ours gets a whole phrase with the quantity in it.
 * The others are read in their favour: where one finds several quantities they are added up, and
 * compromise, which reads the numbers alone, is told the units.
 */
import { recognizeDimension } from "@microsoft/recognizers-text-number-with-unit";
import nlp from "compromise";
import { createReader } from "../../../grammar/read.ts";
import type { Form } from "./quantities.ts";

/** Grams or millimetres; undefined where nothing was read. */
export type ReadQuantity = (text: string, form: Form) => number | undefined;

const UNITS: Readonly<Record<string, number>> = {
  Pound: 453.59237,
  Ounce: 28.349523125,
  Kilogram: 1000,
  Gram: 1,
  Inch: 25.4,
  Foot: 304.8,
  Centimeter: 10,
  Meter: 1000,
  Millimeter: 1,
};

const sum = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((total, value) => total + value, 0);

export const PEERS = ["pegscribe", "recognizers-text", "compromise"] as const;
export type Peer = (typeof PEERS)[number];

export function makePeers(): Record<Peer, ReadQuantity> {
  const reader = createReader();
  return {
    pegscribe(text, { before }) {
      const statement = reader.read([`${before} ${text}`]).statements[0];
      if (statement?.kind === "fish") return statement.weightG;
      return statement?.kind === "change" ? statement.depthMm : undefined;
    },
    "recognizers-text": (text) =>
      sum(
        recognizeDimension(text, "en-us").map(
          ({ resolution }) => (UNITS[resolution?.unit] ?? Number.NaN) * Number(resolution?.value),
        ),
      ),
    compromise: (text, { units }) =>
      sum(
        (nlp(text) as unknown as Numbers)
          .numbers()
          .get()
          .map((value, place) => value * (units[place] ?? 0)),
      ),
  };
}

interface Numbers {
  numbers(): { get(): number[] };
}

export const isRight = (read: number | undefined, value: number): boolean =>
  read !== undefined && Math.abs(read - value) <= 1e-6 * value;
