import type { LogEvent } from "./event.ts";

/** What the first have not, of the others. */
export function lacking(first: readonly LogEvent[], others: readonly LogEvent[]): LogEvent[] {
  const known = new Set(first.map(({ id }) => id));
  return others.filter(({ id }) => !known.has(id));
}
