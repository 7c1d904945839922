/** When a session's pace changed. */
import type { Session } from "../../log/session.ts";
import { fishedStretches, fishedUpTo, lengthOf, type Stretch } from "../effort/stretches.ts";
import { MS_PER_HOUR, MS_PER_MINUTE } from "../units.ts";
import { type Bin, type Change, changePoint } from "./change-point.ts";

export type SessionChange =
  /** `at`: when the change most likely came, milliseconds since the epoch; rates are per hour. */
  (Extract<Change, { tells: true }> & { at: number }) | { tells: false };

/** A session left open for weeks is cut into longer pieces than minutes, not into more of them. */
const MOST_BINS = 2000;

const binLength = (stretches: readonly Stretch[]): number =>
  Math.max(MS_PER_MINUTE, lengthOf(stretches) / MOST_BINS);

/** Fish by fished minute or longer piece; the last one may be a part of one. */
function binsOf(session: Session, stretches: readonly Stretch[]): Bin[] {
  const [total, each] = [lengthOf(stretches), binLength(stretches)];
  const bins = Array.from({ length: Math.ceil(total / each) }, (_, place) => ({
    count: 0,
    exposure: Math.min(each, total - place * each) / MS_PER_HOUR,
  }));
  for (const { at, statement } of session.entries) {
    if (statement.kind !== "fish") continue;
    const place = Math.floor(fishedUpTo(stretches, at) / each);
    const bin = bins[Math.min(place, bins.length - 1)];
    if (bin) bin.count += statement.count ?? 1;
  }
  return bins;
}

/** The time by the clock after so many milliseconds fished. */
function clockAfter(stretches: readonly Stretch[], fishedMs: number): number {
  let left = fishedMs;
  for (const { from, to } of stretches) {
    if (left <= to - from) return from + left;
    left -= to - from;
  }
  return stretches.at(-1)?.to ?? 0;
}

/**
 * The change point of a session's catches up to `now` (milliseconds since the epoch), over fished
 * time, to the minute (33 hours and more: to a 2,000th). Needs two fished minutes and `FEWEST_EVENTS` fish.
 */
export function sessionChange(session: Session, now: number): SessionChange {
  const stretches = fishedStretches(session, now);
  const change = changePoint(binsOf(session, stretches));
  if (!change.tells) return change;
  return { ...change, at: clockAfter(stretches, (change.mode + 1) * binLength(stretches)) };
}
