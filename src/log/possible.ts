import type { LogEvent } from "./event.ts";

/**
 * No time after 2100 (in milliseconds since the epoch), and no weight or length as large, is
 * anybody's; sums over larger ones would run out of numbers.
 */
export const LARGEST = 4_102_444_800_000;

/** Whether an event that somebody else wrote can be, which the schema alone does not ask. */
export const isPossible = (event: LogEvent): boolean => event.at >= 0 && isWithin(event);

/** Whether every number in it, however deep, is between -`LARGEST` and `LARGEST`. */
function isWithin(value: unknown): boolean {
  if (typeof value === "number") return Math.abs(value) <= LARGEST;
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(isWithin);
}
