/** A session laid out over time, for the picture and the words beside it. */
import type { Entry, Session } from "../../log/session.ts";
import type { TimelineRow } from "../../ui/timeline.tsx";

export interface Laid {
  from: number;
  to: number;
  /** Grams landed up to and with each fish that was weighed. */
  climb: { at: number; value: number }[];
  rows: TimelineRow[];
  breaks: { from: number; to: number }[];
}

export interface Hour {
  from: number;
  fish: number;
  /** Grams, fish without a weight left out. */
  grams: number;
  lost: number;
}

const MS_PER_HOUR = 3_600_000;

const ROWS: readonly [name: string, kind: Entry["statement"]["kind"]][] = [
  ["Fish", "fish"],
  ["Lost", "loss"],
  ["Bites", "sign"],
  ["Feed", "feed"],
  ["Changes", "change"],
];

/** Undefined before a session has started. `now` in milliseconds since the epoch. */
export function layOut(session: Session, now: number): Laid | undefined {
  const { startedAt, endedAt, entries, pauses } = session;
  if (startedAt === undefined) return undefined;
  const lastAt = entries.at(-1)?.at ?? startedAt;
  const from = Math.min(startedAt, entries[0]?.at ?? startedAt);
  const to = Math.max(endedAt ?? now, lastAt);
  let value = 0;
  const climb = entries.flatMap(({ at, statement }) => {
    if (statement.kind !== "fish" || statement.weightG === undefined) return [];
    value += statement.weightG * (statement.count ?? 1);
    return [{ at, value }];
  });
  const rows = ROWS.map(([name, kind]) => ({
    name,
    at: entries.filter(({ statement }) => statement.kind === kind).map(({ at }) => at),
  })).filter(({ at }) => at.length > 0);
  const breaks = pauses.map((pause) => ({ from: pause.from, to: pause.to ?? to }));
  return { from, to, climb, rows, breaks };
}

/** An hour that has only just begun is no line of its own. */
const A_WHILE_MS = 60_000;

/** The session hour by hour from its start; the last one may be short. */
export function hoursOf({ entries }: Session, { from, to }: Laid): Hour[] {
  const count = Math.max(1, Math.ceil((to - from - A_WHILE_MS) / MS_PER_HOUR));
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

/** The full hours of the clock within the session, at most about six of them. */
export function clockHours({ from, to }: Laid): number[] {
  const every = Math.max(1, Math.ceil((to - from) / MS_PER_HOUR / 6)) * MS_PER_HOUR;
  const first = new Date(from);
  first.setMinutes(0, 0, 0);
  const hours: number[] = [];
  for (let at = first.getTime() + MS_PER_HOUR; at <= to; at += every) hours.push(at);
  return hours;
}

/**
 * Round values from 0 to the first at or above `top`, three or four steps of them.
 * @param top in grams, like `unit`, the grams in one of the unit that is shown
 */
export function levelsUpTo(top: number, unit: number): number[] {
  const inUnits = Math.max(top / unit, 1);
  const rough = inUnits / 3;
  const tenth = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((size) => size * tenth).find((size) => size >= rough) ?? rough;
  const count = Math.ceil(inUnits / step);
  return Array.from({ length: count + 1 }, (_, place) => place * step * unit);
}
