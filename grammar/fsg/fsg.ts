/** A finite-state grammar with chances, and its text in the format of the Sphinx decoders ("FSG"). */

export interface FsgArc {
  from: number;
  to: number;
  /** Of 1 for all arcs that leave a state. */
  chance: number;
  /** Absent for a step without a word. */
  word?: string;
}

/** That format allows for one final state only. */
export interface Fsg {
  states: number;
  start: number;
  final: number;
  arcs: readonly FsgArc[];
}

export function printFsg({ states, start, final, arcs }: Fsg): string {
  const lines = arcs.map(
    ({ from, to, chance, word }) =>
      `TRANSITION ${from} ${to} ${Number(chance.toPrecision(3))}${word === undefined ? "" : ` ${word}`}`,
  );
  const head = ["FSG_BEGIN pegscribe", `NUM_STATES ${states}`, `START_STATE ${start}`];
  return [...head, `FINAL_STATE ${final}`, ...lines, "FSG_END", ""].join("\n");
}
