/** Whether two groups of waits come from one curve. */
import { chiSquareTail1 } from "../distributions/normal.ts";
import { FEWEST_EVENTS } from "../estimate.ts";
import type { Wait } from "./kaplan-meier.ts";

interface Tally {
  /** Events in each group, and how many were to be expected if the curves were one. */
  observed: readonly [number, number];
  expected: readonly [number, number];
}

export type LogRank =
  | (Tally & { tells: true; chiSquare: number; p: number })
  | (Tally & { tells: false });

/**
 * The log-rank test of two groups. Needs `FEWEST_EVENTS` events in all and both groups waiting at
 * some event. Sources: Mantel 1966; R survival `survdiff`.
 */
export function logRank(first: readonly Wait[], second: readonly Wait[]): LogRank {
  const all = [...first, ...second];
  const times = [...new Set(all.filter(({ event }) => event).map(({ time }) => time))];
  let expectedFirst = 0;
  let variance = 0;
  for (const time of times) {
    const atRisk = waiting(all, time);
    const share = waiting(first, time) / atRisk;
    const events = happened(all, time);
    expectedFirst += events * share;
    // A last wait on its own has no choice to vary by.
    const crowding = atRisk === 1 ? 0 : (atRisk - events) / (atRisk - 1);
    variance += events * share * (1 - share) * crowding;
  }
  const observed = [countEvents(first), countEvents(second)] as const;
  const total = observed[0] + observed[1];
  const tally = { observed, expected: [expectedFirst, total - expectedFirst] as const };
  if (total < FEWEST_EVENTS || variance === 0) return { tells: false, ...tally };
  const chiSquare = (observed[0] - expectedFirst) ** 2 / variance;
  return { tells: true, ...tally, chiSquare, p: chiSquareTail1(chiSquare) };
}

const waiting = (waits: readonly Wait[], time: number): number =>
  waits.filter((wait) => wait.time >= time).length;

const happened = (waits: readonly Wait[], time: number): number =>
  waits.filter((wait) => wait.event && wait.time === time).length;

const countEvents = (waits: readonly Wait[]): number => waits.filter(({ event }) => event).length;
