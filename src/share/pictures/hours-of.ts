/** A session hour by hour, for the words beside its picture. */
import type { Session } from "../../log/session.ts";

export interface Hour {
  from: number;
  fish: number;
  /** Grams, fish without a weight left out. */
  grams: number;
  lost: number;
}

const MS_PER_HOUR = 3_600_000;
/** An hour that has only just begun is no line of its own. */
const A_WHILE_MS = 60_000;
/** A session that was left open for days is told in no more lines: the last takes what is left. */
const MOST_HOURS = 48;

interface Span {
  /** Milliseconds since the epoch. */
  from: number;
  to: number;
}

/** The session hour by hour from its start; the last one may be short. */
export function hoursOf({ entries }: Session, { from, to }: Span): Hour[] {
  const full = Math.ceil((to - from - A_WHILE_MS) / MS_PER_HOUR);
  const count = Math.min(MOST_HOURS, Math.max(1, full));
  const hours = Array.from({ length: count }, (_, place) => ({
    from: from + place * MS_PER_HOUR,
    fish: 0,
    grams: 0,
    lost: 0,
  }));
  for (const { at, statement } of entries) {
    const hour = hours[Math.min(count - 1, Math.floor((at - from) / MS_PER_HOUR))];
    if (!hour) continue;
    if (statement.kind === "loss") hour.lost += 1;
    if (statement.kind !== "fish") continue;
    const fish = statement.count ?? 1;
    hour.fish += fish;
    hour.grams += (statement.weightG ?? 0) * fish;
  }
  return hours;
}
