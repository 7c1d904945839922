/** Fields as whole numbers, of which 0 is never one: it stands for a field that was not said. */
import { GRAMS_PER_POUND, MM_PER_INCH } from "../../ui/format.ts";

interface Around {
  /** The words that cells name by their place, from 1. */
  words: readonly string[];
  /** The statement's own unit. */
  unit: unknown;
}

export interface Codec {
  pack(value: unknown, around: Around & { words: string[] }): number;
  unpack(cell: number, around: Around): unknown;
}

/** Fine enough for what is spoken: a quarter of an ounce or a gram, a quarter of an inch or a mm. */
const GRAMS_PER_QUARTER_OUNCE = GRAMS_PER_POUND / 64;
const MM_PER_QUARTER_INCH = MM_PER_INCH / 4;

const weightStep = ({ unit }: Around): number =>
  /^(lb|oz)$/.test(partOf(unit, "weight")) ? GRAMS_PER_QUARTER_OUNCE : 1;

const lengthStep = ({ unit }: Around): number =>
  /^(in|ft)$/.test(partOf(unit, "length")) ? MM_PER_QUARTER_INCH : 1;

function partOf(unit: unknown, part: "weight" | "length"): string {
  const said = (unit ?? {}) as Partial<Record<typeof part, string>>;
  return said[part] ?? "";
}

/** A size above nothing stays above it. */
const steps = (size: number, step: number): number => Math.max(1, Math.round(size / step));

export const weight: Codec = {
  pack: (value, around) => steps(Number(value), weightStep(around)),
  unpack: (cell, around) => cell * weightStep(around),
};

export const length: Codec = {
  pack: (value, around) => steps(Number(value), lengthStep(around)),
  unpack: (cell, around) => cell * lengthStep(around),
};

/** Numbers that may be 0 or less make room for "not said" by moving up by one from 0 on. */
const makeRoom = (value: number): number => (value < 0 ? value : value + 1);
const takeRoom = (cell: number): number => (cell < 0 ? cell : cell - 1);

export const shift: Codec = {
  pack: (value, around) => makeRoom(Math.round(Number(value) / lengthStep(around))),
  unpack: (cell, around) => takeRoom(cell) * lengthStep(around),
};

export const tenth: Codec = {
  pack: (value) => makeRoom(Math.round(Number(value) * 10)),
  unpack: (cell) => takeRoom(cell) / 10,
};

export const whole: Codec = { pack: Number, unpack: (cell) => cell };

export const flag: Codec = { pack: () => 1, unpack: () => true };

export const word: Codec = {
  pack: (value, { words }) => placeOf(String(value), words),
  unpack: (cell, { words }) => words[cell - 1],
};

/** "lb,cm": the units that were spoken, of which either may be missing. */
export const unit: Codec = {
  pack: (value, { words }) =>
    placeOf(`${partOf(value, "weight")},${partOf(value, "length")}`, words),
  unpack: (cell, { words }) => {
    const [weight, length] = (words[cell - 1] ?? "").split(",");
    return { ...(weight && { weight }), ...(length && { length }) };
  },
};

function placeOf(word: string, words: string[]): number {
  const known = words.indexOf(word);
  return known < 0 ? words.push(word) : known + 1;
}
