/** How long bites took, by what the rig was. */
import { type BiteTimes, biteTimes } from "../../analysis/bites/drops.ts";
import type { Factor } from "../../analysis/effort/exposure.ts";
import type { Session } from "../../log/session.ts";

export type BiteFactor = Exclude<Factor, "hour">;

export interface SessionBites {
  factor: BiteFactor;
  /** The levels with the most drops, the most first. */
  levels: BiteTimes[];
  /** Levels with fewer drops than those. */
  more: number;
}

/** Each curve takes a stretch of the screen. */
const MOST = 4;

/** Without spoken drops there are no levels. `now` in milliseconds since the epoch. */
export function bitesOf(factor: BiteFactor, session: Session, now: number): SessionBites {
  const all = biteTimes(factor, session, now).sort(
    (one, other) => other.drops.length - one.drops.length,
  );
  return { factor, levels: all.slice(0, MOST), more: Math.max(0, all.length - MOST) };
}

export const bitesIn = ({ drops }: BiteTimes): number => drops.filter(({ event }) => event).length;

/** The longest wait of a drop, in seconds. */
export const longestWait = ({ drops }: BiteTimes): number =>
  Math.max(0, ...drops.map(({ time }) => time));
