/** The text of a finite-state grammar in the format of the Sphinx decoders ("FSG"). */
import type { Fsg } from "../../../grammar/fsg/fsg.ts";

export function printFsg({ states, start, final, arcs }: Fsg): string {
  const lines = arcs.map(
    ({ from, to, chance, word }) =>
      `TRANSITION ${from} ${to} ${Number(chance.toPrecision(3))}${word === undefined ? "" : ` ${word}`}`,
  );
  const head = ["FSG_BEGIN pegscribe", `NUM_STATES ${states}`, `START_STATE ${start}`];
  return [...head, `FINAL_STATE ${final}`, ...lines, "FSG_END", ""].join("\n");
}

/** Reads what `printFsg` writes. */
export function parseFsg(text: string): Fsg {
  const number = (name: string): number => {
    const value = new RegExp(`^${name} (\\d+)$`, "m").exec(text)?.[1];
    if (value === undefined) throw new Error(`The grammar names no ${name}.`);
    return Number(value);
  };
  const lines = text.matchAll(/^TRANSITION (\d+) (\d+) (\S+)(?: (\S+))?$/gm);
  const arcs = Array.from(lines, ([, from, to, chance, word]) => ({
    from: Number(from),
    to: Number(to),
    chance: Number(chance),
    ...(word !== undefined && { word }),
  }));
  return {
    states: number("NUM_STATES"),
    start: number("START_STATE"),
    final: number("FINAL_STATE"),
    arcs,
  };
}
