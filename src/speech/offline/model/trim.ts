/**
 * Cuts the model down to what the words of a dictionary can need, with the same results for them: a
 * word's own triphones, and at its two ends those with every neighbour. What another word lacks
 * then, the decoder replaces by its nearest phone.
 */
import type { Pronounced } from "../decoder.ts";
import type { ModelFiles } from "../decoder-module.ts";
import {
  type ModelDefinition,
  type Position,
  parseDefinition,
  printDefinition,
  type Triphone,
} from "./definition.ts";
import { keepSenones } from "./mixtures.ts";
import { nearest, type Sound } from "./nearest.ts";

export function trimModel(model: ModelFiles, dictionary: readonly Pronounced[]): ModelFiles {
  const definition = parseDefinition(model.mdef);
  const find = nearest(definition);
  const triphones = soundsOf(definition, dictionary).flatMap((sound): Triphone[] => {
    const found = find(sound);
    return found ? [{ ...sound, sequence: found.sequence, transitions: found.transitions }] : [];
  });
  const { trimmed, senones } = renumber({ ...definition, triphones });
  return { ...model, mdef: printDefinition(trimmed), sendump: keepSenones(model.sendump, senones) };
}

/** Every phone in context that the decoder may ask for, once each. */
function soundsOf(
  { phones }: ModelDefinition,
  dictionary: readonly Pronounced[],
): readonly Sound[] {
  const numbers = new Map(phones.map(({ name }, index) => [name, index]));
  const silence = numbers.get("SIL") as number;
  const everyPhone = phones.flatMap(({ isFiller }, index) =>
    isFiller && index !== silence ? [] : [index],
  );
  const sounds = new Map<string, Sound>();
  const add = (position: Position, base: number, lefts: number[], rights: number[]) => {
    for (const left of lefts)
      for (const right of rights)
        sounds.set(`${position} ${base} ${left} ${right}`, { position, base, left, right });
  };
  for (const [, said] of dictionary) {
    const row = said.split(" ").map((phone) => numbers.get(phone) as number);
    const [first, last] = [row[0] as number, row.at(-1) as number];
    // A word of one phone is looked up as if silence followed it.
    if (row.length === 1) add("single", first, everyPhone, [silence]);
    else {
      add("begins", first, everyPhone, [row[1] as number]);
      for (const [index, base] of row.slice(1, -1).entries())
        add("inside", base, [row[index] as number], [row[index + 2] as number]);
      add("ends", last, [row.at(-2) as number], everyPhone);
    }
  }
  return [...sounds.values()];
}

/** Drops the rows and senones that nothing names any more. */
function renumber(definition: ModelDefinition): { trimmed: ModelDefinition; senones: number[] } {
  const { phones, triphones, sequences, plainSenones } = definition;
  const rows = [...new Set([...phones, ...triphones].map(({ sequence }) => sequence))].sort(
    byValue,
  );
  const named = new Set(rows.flatMap((row) => sequences[row] as readonly number[]));
  for (let senone = 0; senone < plainSenones; senone += 1) named.add(senone);
  const senones = [...named].sort(byValue);
  const [rowNumbers, senoneNumbers] = [placesIn(rows), placesIn(senones)];
  const moved = <T extends { sequence: number }>(one: T): T => ({
    ...one,
    sequence: rowNumbers.get(one.sequence) as number,
  });
  const trimmed: ModelDefinition = {
    ...definition,
    phones: phones.map(moved),
    triphones: triphones.map(moved),
    sequences: rows.map((row) =>
      (sequences[row] as readonly number[]).map((senone) => senoneNumbers.get(senone) as number),
    ),
    senones: senones.length,
  };
  return { trimmed, senones };
}

const byValue = (a: number, b: number): number => a - b;

const placesIn = (values: readonly number[]): ReadonlyMap<number, number> =>
  new Map(values.map((value, place) => [value, place]));
