/** A time of day as the end of a session. */

const DAY_MS = 24 * 3_600_000;

/**
 * The next moment, from `from` on, at which clocks here show `clock`, such as "15:30": a session
 * that ends before it starts runs past midnight.
 * @param from milliseconds since the epoch
 */
export function endAt(clock: string, from: number): number | undefined {
  const [hours, minutes] = clock.split(":").map(Number);
  if (hours === undefined || minutes === undefined || Number.isNaN(hours + minutes)) {
    return undefined;
  }
  const end = new Date(from).setHours(hours, minutes, 0, 0);
  return end < from ? new Date(end + DAY_MS).setHours(hours, minutes, 0, 0) : end;
}
