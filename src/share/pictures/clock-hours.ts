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

/** The full hours of the clock within a span, at most about six of them. */
export function clockHours({ from, to }: Span): Tick[] {
  const every = Math.max(1, Math.ceil((to - from) / MS_PER_HOUR / MOST)) * MS_PER_HOUR;
  const first = new Date(from);
  first.setMinutes(0, 0, 0);
  const hours: Tick[] = [];
  for (let at = first.getTime() + MS_PER_HOUR; at <= to; at += every) {
    hours.push({ at, name: formatClock(at) });
  }
  return hours;
}

/** The hours since the start of a span, for spans of different days side by side. */
export function hoursSince({ from, to }: Span): Tick[] {
  const every = Math.max(1, Math.ceil((to - from) / MS_PER_HOUR / MOST));
  const count = Math.floor((to - from) / MS_PER_HOUR / every);
  return Array.from({ length: count }, (_, place) => ({
    at: from + (place + 1) * every * MS_PER_HOUR,
    name: `${(place + 1) * every} h`,
  }));
}
