/** Rules of the plan that a session breaks, or is about to break. */
import type { Session } from "../../log/session.ts";
import type { Bias } from "../weights/bias.ts";
import { netRisks } from "../weights/nets.ts";
import { baitUsed } from "./bait.ts";

export type Breach =
  /** More line above the float than allowed, millimetres. */
  | { rule: "lash"; lashMm: number; limitMm: number }
  /** A net over its limit, or one fish away, at the risk taken; grams. */
  | { rule: "net"; net: number; standing: "over" | "one-more"; chance: number; limitG: number }
  /** More of a bait fed than may be used, grams. */
  | { rule: "bait"; bait: string; usedG: number; limitG: number }
  /** Fishing after time; milliseconds since the epoch. */
  | { rule: "time"; endedAt: number };

function lashBreach({ setUp, plan }: Session): Breach[] {
  const limitMm = plan.lashLimitMm;
  const { lashMm } = setUp;
  return lashMm !== undefined && typeof limitMm === "number" && lashMm > limitMm
    ? [{ rule: "lash", lashMm, limitMm }]
    : [];
}

function netBreaches(session: Session, bias: Bias, risk: number): Breach[] {
  const limitG = session.plan.netLimitG ?? Number.POSITIVE_INFINITY;
  return netRisks(session, bias, risk).flatMap((one): Breach[] => {
    const { net, standing, chanceOver, chanceAfterNext } = one;
    if (standing === "over") return [{ rule: "net", net, standing, chance: chanceOver, limitG }];
    // Only the net in use can get one fish more.
    return standing === "one-more" && net === session.net
      ? [{ rule: "net", net, standing, chance: chanceAfterNext, limitG }]
      : [];
  });
}

function baitBreaches(session: Session): Breach[] {
  const used = baitUsed(session.entries);
  return Object.entries(session.plan.baitLimitsG ?? {}).flatMap(([bait, limitG]) => {
    const usedG = used.get(bait)?.grams ?? 0;
    return usedG > limitG ? [{ rule: "bait", bait, usedG, limitG }] : [];
  });
}

function timeBreach({ plan, state }: Session, now: number): Breach[] {
  const { endsAt } = plan;
  return state === "fishing" && typeof endsAt === "number" && now > endsAt
    ? [{ rule: "time", endedAt: endsAt }]
    : [];
}

/**
 * All rules that do not hold at `now` (milliseconds since the epoch), nothing where the plan sets no
 * limit. `risk` (0 to 1) is the chance of a net over its limit that the angler will bear. An aid
 * only: the fishery's own rules come first.
 */
export const breachesOf = (session: Session, now: number, bias: Bias, risk: number): Breach[] => [
  ...lashBreach(session),
  ...netBreaches(session, bias, risk),
  ...baitBreaches(session),
  ...timeBreach(session, now),
];
