/** Fish an hour of fishing time: a plain count, now and over the session. */

import type { Session } from "../../log/session.ts";
import { clip, fishedStretches, lengthOf, reached, type Stretch } from "../effort/stretches.ts";

/** "Now" is the last half hour, breaks not taken out of its limits but out of its time. */
export const NOW_MS = 30 * 60_000;
/** Before this much fishing a rate is all luck; a choice of our own. */
const LEAST_FISHED_MS = 10 * 60_000;

const MS_PER_HOUR = 3_600_000;

/** Fish an hour; undefined where too little was fished to say. */
export interface RateNow {
  now: number | undefined;
  session: number | undefined;
}

/** @param now milliseconds since the epoch */
export function rateNow(session: Session, now: number): RateNow {
  const fished = fishedStretches(session, now);
  const end = reached(session, now);
  const from = end - NOW_MS;
  const isLonger = (session.startedAt ?? end) < from;
  return {
    now: isLonger ? perHour(countSince(session, from), clip(fished, from, end)) : undefined,
    session: perHour(session.count, fished),
  };
}

function perHour(fish: number, fished: readonly Stretch[]): number | undefined {
  const ms = lengthOf(fished);
  return ms < LEAST_FISHED_MS ? undefined : (fish * MS_PER_HOUR) / ms;
}

/** Counted from the newest back, so that a long session costs no more than its last half hour. */
function countSince({ entries }: Session, from: number): number {
  let fish = 0;
  for (let place = entries.length - 1; place >= 0; place -= 1) {
    const entry = entries[place];
    if (!entry || entry.at <= from) break;
    if (entry.statement.kind === "fish") fish += entry.statement.count ?? 1;
  }
  return fish;
}
