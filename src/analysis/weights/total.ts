/** The weight of some nets by what was spoken, the angler's bias taken out, as an interval. */
import type { Session } from "../../log/session.ts";
import {
  type LogNormal,
  logNormalAbove,
  logNormalByMoments,
  logNormalInterval,
} from "../distributions/lognormal.ts";
import { type Estimate, estimate, LEVEL } from "../estimate.ts";
import type { Bias } from "./bias.ts";
import { type Load, loadsOf } from "./loads.ts";

/** A certain part, in grams, and one that is only believed; undefined where there is none. */
export interface Mass {
  certainG: number;
  /**
   * As likely passed as not reached, so that an angler of whom nothing is known is told what he
   * said. The mean lies a few in a hundred above it.
   */
  middleG: number;
  believed: LogNormal | undefined;
  /** Fish of which nothing is known add at least nothing, and no upper limit holds. */
  unknown: number;
}

/**
 * The mass of the loads together. What was weighed is certain. The rest is spoken × bias, each net's
 * bias log-normal: one part shared by all nets of the angler and the day, so their doubt does not
 * average out, and one part of each net's own. The sum is put into a log-normal by its mean and variance.
 */
export function massOf(loads: readonly Load[], { belief, perSession, perNet }: Bias): Mass {
  const certainG = loads.reduce((total, { weighedG = 0 }) => total + weighedG, 0);
  const open = loads.filter(({ weighedG }) => weighedG === undefined);
  const unknown = open.reduce((total, load) => total + load.unknown, 0);
  const spoken = open.reduce((total, { spokenG }) => total + spokenG, 0);
  if (spoken === 0) return { certainG, middleG: certainG, believed: undefined, unknown };
  const common = belief.variance + perSession;
  const factor = Math.exp(belief.mean + (common + perNet) / 2);
  const shared = Math.exp(common);
  const single = shared * Math.exp(perNet);
  const variance = open.reduce(
    (total, load) =>
      total + (load.spokenG ** 2 + load.variance) * single - load.spokenG ** 2 * shared,
    spoken ** 2 * (shared - 1),
  );
  const believed = logNormalByMoments(spoken * factor, variance * factor ** 2);
  return { certainG, middleG: certainG + Math.exp(believed.mu), believed, unknown };
}

/**
 * The mass in grams with its limits. Names a value where something is known of every fish; no fish
 * at all weigh nothing, and certainly so.
 */
export function massEstimate(
  { certainG, middleG, believed, unknown }: Mass,
  level = LEVEL,
): Estimate {
  const limits = believed ? logNormalInterval(believed, level) : { lower: 0, upper: 0 };
  return estimate(unknown === 0, middleG, {
    lower: certainG + limits.lower,
    upper: unknown === 0 ? certainG + limits.upper : Number.POSITIVE_INFINITY,
  });
}

/** The bag of a session in grams: what the live screen shows, and what "what have I got" is told. */
export const totalOf = (session: Session, bias: Bias, level = LEVEL): Estimate =>
  massEstimate(massOf(loadsOf(session), bias), level);

/** Chance that the mass is above `bar` grams, as far as the known fish go. */
export const chanceMassAbove = (bar: number, { certainG, believed }: Mass): number =>
  believed ? logNormalAbove(bar - certainG, believed) : certainG > bar ? 1 : 0;
