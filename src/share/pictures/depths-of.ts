/** A session by depth: what was caught where and when, and how deep the rig was. */
import { type Exposure, exposuresBy } from "../../analysis/effort/exposure.ts";
import { spellsOf } from "../../analysis/effort/spells.ts";
import type { Entry, Session } from "../../log/session.ts";
import type { Caught, Kept } from "../../ui/charts/depths.tsx";

export interface SessionDepths {
  /** Milliseconds since the epoch; depths in millimetres, sizes in grams. */
  from: number;
  to: number;
  caught: Caught[];
  lost: Caught[];
  kept: Kept[];
  bottomMm?: number;
  /** From the surface down; only named ones. */
  byDepth: (Exposure & { level: number })[];
  /** Fish landed while no depth had been said. */
  unknown: number;
}

/** Undefined before a session has started. `now` in milliseconds since the epoch. */
export function depthsOf(session: Session, now: number): SessionDepths | undefined {
  const { startedAt, endedAt, entries, plan } = session;
  if (startedAt === undefined) return undefined;
  const exposures = exposuresBy("depth", session, now);
  const unknown = exposures.find(({ level }) => level === undefined)?.fish ?? 0;
  return {
    from: Math.min(startedAt, entries[0]?.at ?? startedAt),
    to: Math.max(endedAt ?? now, entries.at(-1)?.at ?? startedAt),
    caught: marksOf(entries, "fish"),
    lost: marksOf(entries, "loss"),
    kept: keptOf(session, now),
    ...(plan.waterDepthMm ? { bottomMm: plan.waterDepthMm } : {}),
    byDepth: exposures
      .flatMap((one) => (typeof one.level === "number" ? [{ ...one, level: one.level }] : []))
      .sort((one, other) => one.level - other.level),
    unknown,
  };
}

const marksOf = (entries: readonly Entry[], kind: "fish" | "loss"): Caught[] =>
  entries.flatMap(({ at, statement, setUp: { depthMm } }) => {
    if (statement.kind !== kind || depthMm === undefined) return [];
    const grams = statement.kind === "fish" ? (statement.weightG ?? 0) : 0;
    return [{ at, depth: depthMm, size: grams }];
  });

/** Stretches of one depth; a change of anything else goes on with the line. */
function keptOf(session: Session, now: number): Kept[] {
  const kept: Kept[] = [];
  for (const { setUp, stretches } of spellsOf(session, now)) {
    const depth = setUp.depthMm;
    if (depth === undefined) continue;
    for (const { from, to } of stretches) {
      const last = kept.at(-1);
      if (last?.to === from && last.depth === depth) last.to = to;
      else kept.push({ from, to, depth });
    }
  }
  return kept;
}
