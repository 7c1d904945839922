/** Whether a net is over its limit, or one fish away from it. */
import type { Session } from "../../log/session.ts";
import type { Estimate } from "../estimate.ts";
import { Running } from "../running.ts";
import type { Bias } from "./bias.ts";
import type { Load } from "./loads.ts";
import { chanceMassAbove, massEstimate, massOf } from "./total.ts";
import type { Typical } from "./typical.ts";

export interface NetRisk {
  net: number;
  /** Grams in it. */
  mass: Estimate;
  /** Chance that it is over the limit now, and once one more fish like the others is in. */
  chanceOver: number;
  chanceAfterNext: number;
  /** Which of the two is above the risk taken. */
  standing: "over" | "one-more" | "fine";
}

/** A load with one more fish in it. */
const withOneMore = (load: Load, typical: Typical | undefined): Load => ({
  ...load,
  spokenG: load.spokenG + (typical?.meanG ?? 0),
  variance: load.variance + (typical?.variance ?? 0),
});

/** One net against a limit in grams (> 0); `risk` (0 to 1) is the chance the angler will bear. */
export function netRisk(
  load: Load,
  bias: Bias,
  typical: Typical | undefined,
  limitG: number,
  risk: number,
): NetRisk {
  const mass = massOf([load], bias);
  const chanceOver = chanceMassAbove(limitG, mass);
  const chanceAfterNext = chanceMassAbove(limitG, massOf([withOneMore(load, typical)], bias));
  const standing = chanceOver > risk ? "over" : chanceAfterNext > risk ? "one-more" : "fine";
  return { net: load.net, mass: massEstimate(mass), chanceOver, chanceAfterNext, standing };
}

/**
 * All nets of a session against the limit of its plan; without a limit there is nothing to say. Fish
 * of unknown weight count for nothing, so a net of none but those is "fine" with a mass that does
 * not tell. `sums` are the session's, where they are at hand.
 */
export function netRisks(
  session: Session,
  bias: Bias,
  risk: number,
  sums = Running.over(session),
): NetRisk[] {
  const limitG = session.plan.netLimitG;
  if (limitG === undefined || limitG === null) return [];
  const { loads, typical } = sums;
  return loads.map((load) => netRisk(load, bias, typical, limitG, risk));
}
