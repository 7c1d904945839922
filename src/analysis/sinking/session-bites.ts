/** The depths at which a session's bites came. */
import type { Session } from "../../log/session.ts";
import { dropsOf } from "../bites/drops.ts";
import { type BiteDepth, biteDepth } from "./bite-depth.ts";

/** The water's temperature in °C as last spoken; undefined if it never was. */
export const waterTemperature = (session: Session): number | undefined =>
  session.entries.reduce<number | undefined>(
    (last, { statement }) => (statement.kind === "conditions" ? (statement.waterC ?? last) : last),
    undefined,
  );

/**
 * Depths of the bites that followed a spoken drop on a rig of known depth, for a bait that falls at
 * `speed` m/s. None without such drops; `now` in milliseconds since the epoch.
 */
export const biteDepths = (session: Session, now: number, speed: number): BiteDepth[] =>
  dropsOf(session, now).flatMap(({ time, event, setUp }) =>
    event && setUp.depthMm !== undefined ? [biteDepth(time, speed, setUp.depthMm)] : [],
  );
