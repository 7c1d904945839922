/** The depths at which a session's bites came. */
import type { Session, SetUp } from "../../log/session.ts";
import { dropsOf } from "../bites/drops.ts";
import { type BiteDepth, biteDepth } from "./bite-depth.ts";

/** The water's temperature in °C as last spoken; undefined if it never was. */
export const waterTemperature = (session: Session): number | undefined =>
  session.entries.reduce<number | undefined>(
    (last, { statement }) => (statement.kind === "conditions" ? (statement.waterC ?? last) : last),
    undefined,
  );

/**
 * Depths of the bites that followed a spoken drop on a rig of known depth. `speed` is how fast the
 * bait sinks in m/s, or says so of a set-up; a set-up of which it knows nothing has no depths. None
 * without such drops; `now` in milliseconds since the epoch.
 */
export function biteDepths(
  session: Session,
  now: number,
  speed: number | ((setUp: SetUp) => number | undefined),
): BiteDepth[] {
  const speedOf = typeof speed === "number" ? () => speed : speed;
  return dropsOf(session, now).flatMap(({ time, event, setUp }) => {
    const sinks = speedOf(setUp);
    if (!event || setUp.depthMm === undefined || sinks === undefined) return [];
    return [biteDepth(time, sinks, setUp.depthMm)];
  });
}
