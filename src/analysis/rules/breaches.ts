/** Rules of the plan that a session breaks, or is about to break. */
import type { Session } from "../../log/session.ts";
import { Running } from "../running.ts";
import type { Bias } from "../weights/bias.ts";
import { netRisks } from "../weights/nets.ts";

export type Breach =
  /** More line above the float than allowed, millimetres. */
  | { rule: "lash"; lashMm: number; limitMm: number }
  /** A net over its limit, or one fish away, at the risk taken; grams. */
  | { rule: "net"; net: number; standing: "over" | "one-more"; chance: number; limitG: number }
  /** More nets in use than are allowed. */
  | { rule: "nets"; used: number; allowed: number }
  /** A bait on the hook or fed that is not allowed. */
  | { rule: "bait-banned"; bait: string }
  /** More of a bait fed than may be used, grams. */
  | { rule: "bait"; bait: string; usedG: number; limitG: number }
  /** Fishing before or after the time allowed; milliseconds since the epoch. */
  | { rule: "early"; startsAt: number }
  | { rule: "time"; endedAt: number };

function lashBreach({ setUp, plan }: Session): Breach[] {
  const limitMm = plan.lashLimitMm;
  const { lashMm } = setUp;
  return lashMm !== undefined && typeof limitMm === "number" && lashMm > limitMm
    ? [{ rule: "lash", lashMm, limitMm }]
    : [];
}

function netBreaches(session: Session, bias: Bias, risk: number, sums: Running): Breach[] {
  const limitG = session.plan.netLimitG ?? Number.POSITIVE_INFINITY;
  return netRisks(session, bias, risk, sums).flatMap((one): Breach[] => {
    const { net, standing, chanceOver, chanceAfterNext } = one;
    if (standing === "over") return [{ rule: "net", net, standing, chance: chanceOver, limitG }];
    // Only the net in use can get one fish more.
    return standing === "one-more" && net === session.net
      ? [{ rule: "net", net, standing, chance: chanceAfterNext, limitG }]
      : [];
  });
}

function netCountBreach({ nets, plan }: Session): Breach[] {
  const allowed = plan.netsAllowed;
  const used = nets.filter(({ number, count }) => count > 0 || number > 1).length;
  return typeof allowed === "number" && used > allowed ? [{ rule: "nets", used, allowed }] : [];
}

function baitBreaches({ plan, setUp }: Session, { baits }: Running): Breach[] {
  const over = Object.entries(plan.baitLimitsG ?? {}).flatMap(([bait, limitG]): Breach[] => {
    const usedG = baits.get(bait)?.grams ?? 0;
    return usedG > limitG ? [{ rule: "bait", bait, usedG, limitG }] : [];
  });
  const banned = (plan.baitsBanned ?? []).filter((bait) => setUp.bait === bait || baits.has(bait));
  return [...banned.map((bait): Breach => ({ rule: "bait-banned", bait })), ...over];
}

function timeBreach({ plan, state }: Session, now: number): Breach[] {
  if (state !== "fishing") return [];
  const { startsAt, endsAt } = plan;
  if (typeof startsAt === "number" && now < startsAt) return [{ rule: "early", startsAt }];
  return typeof endsAt === "number" && now > endsAt ? [{ rule: "time", endedAt: endsAt }] : [];
}

/**
 * All rules that do not hold at `now` (milliseconds since the epoch), nothing where the plan sets no
 * limit. `risk` (0 to 1) is the chance of a net over its limit that the angler will bear; `sums` are
 * the session's, where they are at hand. An aid only: the fishery's own rules come first.
 */
export const breachesOf = (
  session: Session,
  now: number,
  bias: Bias,
  risk: number,
  sums = Running.over(session),
): Breach[] => [
  ...lashBreach(session),
  ...netBreaches(session, bias, risk, sums),
  ...netCountBreach(session),
  ...baitBreaches(session, sums),
  ...timeBreach(session, now),
];
