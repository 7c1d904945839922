import type { LogEvent } from "./event.ts";

/** Where an event or an entry stands among the others. */
export type Place = Pick<LogEvent, "at" | "device" | "seq" | "id"> & {
  /** Of what was split off: how far behind what it was split from. */
  piece?: number;
};

/**
 * The log's one order: time, device, sequence number. The id is asked last, so that even a
 * number given twice leaves the order the same everywhere.
 * @returns negative if `a` comes first, positive if `b` does, 0 only for one and the same
 */
export function comparePlaces(a: Place, b: Place): number {
  return (
    a.at - b.at ||
    byText(a.device, b.device) ||
    a.seq - b.seq ||
    (a.piece ?? 0) - (b.piece ?? 0) ||
    byText(a.id, b.id)
  );
}

/** By code unit, not by locale: the order must not depend on the phone's language. */
function byText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
