/** Ticks for the foot of a picture over time. */
import type { Tick } from "../../ui/charts/axes.tsx";
import { formatClock } from "../../ui/format.ts";

const MS_PER_HOUR = 3_600_000;
/** More would run into each other on a phone. */
const MOST = 6;

interface Span {
  /** Milliseconds since the epoch. */
  from: number;
  to: number;
}

/** Round times of the clock within a span, at most about six: full hours, or parts of one. */
export function clockHours({ from, to }: Span): Tick[] {
  const every = stepFor(to - from);
  const hour = new Date(from).setMinutes(0, 0, 0);
  // From the next full hour on where steps are hours, so that they do not begin with an odd one.
  const first =
    hour + Math.max(1, Math.ceil((from + 1 - hour) / every)) * Math.min(every, MS_PER_HOUR);
  const ticks: Tick[] = [];
  for (let at = first; at <= to; at += every) ticks.push({ at, name: formatClock(at) });
  return ticks;
}

const PARTS_OF_AN_HOUR_MS = [5, 10, 15, 30].map((minutes) => minutes * 60_000);

const stepFor = (spanMs: number): number =>
  PARTS_OF_AN_HOUR_MS.find((step) => spanMs / step <= MOST) ??
  Math.max(1, Math.ceil(spanMs / MS_PER_HOUR / MOST)) * MS_PER_HOUR;

/** The hours since the start of a span, for spans of different days side by side. */
export function hoursSince({ from, to }: Span): Tick[] {
  const every = Math.max(1, Math.ceil((to - from) / MS_PER_HOUR / MOST));
  const count = Math.floor((to - from) / MS_PER_HOUR / every);
  return Array.from({ length: count }, (_, place) => ({
    at: from + (place + 1) * every * MS_PER_HOUR,
    name: `${(place + 1) * every} h`,
  }));
}
