/**
 * Short motifs, one for each outcome. Any two differ in the way they move and in their rhythm, so
 * that either alone tells them apart when wind takes the other away. All lie above 600 Hz, clear of
 * most wind noise and within what a phone's speaker can do (from memory).
 */

export type Outcome = "logged" | "check" | "not-understood" | "taken-back" | "warning";

export interface Note {
  hz: number;
  /** From the beginning of the motif. */
  atMs: number;
  lengthMs: number;
}

export const MOTIFS: Readonly<Record<Outcome, readonly Note[]>> = {
  /** Up, short then long. */
  logged: [
    { hz: 740, atMs: 0, lengthMs: 80 },
    { hz: 1110, atMs: 110, lengthMs: 180 },
  ],
  /** Up and back, three alike: a question. */
  check: [
    { hz: 740, atMs: 0, lengthMs: 110 },
    { hz: 990, atMs: 170, lengthMs: 110 },
    { hz: 740, atMs: 340, lengthMs: 110 },
  ],
  /** Level, twice and slow. */
  "not-understood": [
    { hz: 660, atMs: 0, lengthMs: 240 },
    { hz: 660, atMs: 360, lengthMs: 240 },
  ],
  /** Down, long then short: the first one undone. */
  "taken-back": [
    { hz: 1110, atMs: 0, lengthMs: 220 },
    { hz: 660, atMs: 250, lengthMs: 70 },
  ],
  /** To and fro, six and quick. */
  warning: [0, 1, 2, 3, 4, 5].map((step) => ({
    hz: step % 2 === 0 ? 1320 : 880,
    atMs: step * 90,
    lengthMs: 70,
  })),
};

export function motifLengthMs(outcome: Outcome): number {
  return Math.max(...MOTIFS[outcome].map(({ atMs, lengthMs }) => atMs + lengthMs));
}
