/** A finite-state grammar with chances, fit for a decoder. */

export interface FsgArc {
  from: number;
  to: number;
  /** Of 1 for all arcs that leave a state. */
  chance: number;
  /** Absent for a step without a word. */
  word?: string;
}

/** With one final state: decoders allow for no more. */
export interface Fsg {
  states: number;
  start: number;
  final: number;
  arcs: readonly FsgArc[];
}
