/** Where to start today, by what earlier sessions say. */
import { FEWEST_EVENTS, sum } from "../estimate.ts";
import { bestOverPast, type SeasonBest } from "./over-sessions.ts";
import type { PastSession } from "./past.ts";

export interface Start {
  /** The water whose sessions these sums rest on; absent where they rest on all waters. */
  water?: string;
  /** Sessions, and hours fished at a named depth in them. */
  sessions: number;
  hours: number;
  depth: SeasonBest;
  rig: SeasonBest;
  bait: SeasonBest;
}

/** One session alone is a day, not a habit of the water. */
const FEWEST_SESSIONS = 2;

const fishOf = (past: readonly PastSession[]): number =>
  sum(past.flatMap(({ trials }) => trials.depth.map(({ fish }) => fish)));

/**
 * Depth, rig and bait to start with. The water's own sessions speak where there are
 * `FEWEST_SESSIONS` of them with `FEWEST_EVENTS` fish at a named depth; else those of all waters do.
 * Without any session every verdict is "too-few".
 */
export function startAt(water: string | undefined, past: readonly PastSession[]): Start {
  const own = past.filter((one) => one.water === water);
  const isOwn =
    water !== undefined && own.length >= FEWEST_SESSIONS && fishOf(own) >= FEWEST_EVENTS;
  const from = isOwn ? own : past;
  return {
    ...(isOwn ? { water } : {}),
    sessions: from.length,
    hours: sum(from.flatMap(({ trials }) => trials.depth.map(({ hours }) => hours))),
    depth: bestOverPast("depth", from),
    rig: bestOverPast("rig", from),
    bait: bestOverPast("bait", from),
  };
}
