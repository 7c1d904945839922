/** The time in which the rig could catch: from the start to the end with the pauses out. */
import type { Session } from "../../log/session.ts";

/** Milliseconds since the epoch, `from` before `to`. */
export interface Stretch {
  from: number;
  to: number;
}

/**
 * How far a session has got, milliseconds since the epoch. While the phone's clock, set back, lies
 * behind what is written, that is as far as is written.
 */
export const reached = ({ endedAt, entries }: Session, now: number): number =>
  endedAt ?? Math.max(now, entries.at(-1)?.at ?? now);

/**
 * The fished stretches of a session, in order of time. A session that has not started has none; one
 * that still lasts goes up to `now` (milliseconds since the epoch).
 */
export function fishedStretches(session: Session, now: number): Stretch[] {
  if (session.startedAt === undefined) return [];
  const end = reached(session, now);
  const stretches: Stretch[] = [];
  let from = session.startedAt;
  for (const pause of session.pauses) {
    stretches.push({ from, to: Math.min(pause.from, end) });
    from = Math.max(from, pause.to ?? end);
  }
  stretches.push({ from, to: end });
  return stretches.filter((stretch) => stretch.from < stretch.to);
}

/** The parts of the stretches that lie between two times. */
export const clip = (stretches: readonly Stretch[], from: number, to: number): Stretch[] =>
  stretches
    .map((stretch) => ({ from: Math.max(stretch.from, from), to: Math.min(stretch.to, to) }))
    .filter((stretch) => stretch.from < stretch.to);

/** Milliseconds in all. */
export const lengthOf = (stretches: readonly Stretch[]): number =>
  stretches.reduce((total, { from, to }) => total + to - from, 0);

/** Milliseconds fished up to a time; a time within a pause counts as the pause's beginning. */
export const fishedUpTo = (stretches: readonly Stretch[], at: number): number =>
  lengthOf(clip(stretches, Number.NEGATIVE_INFINITY, at));
