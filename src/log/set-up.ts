/** How a change moves the set-up in force. */
import type { StatementOf } from "../../grammar/statement.ts";
import type { PlanRig } from "./event.ts";
import type { SetUp } from "./session.ts";

/** What belongs to a rig, so that it is as it was when the rig comes out again. */
type OfRig = Pick<SetUp, "depthMm" | "lashMm" | "hook" | "bait" | "baitNote">;

/** The set-up in force and, per rig, how each was last fished; both in millimetres. */
export interface Tackle {
  setUp: Readonly<SetUp>;
  /** Kept up in place: a copy would make each change dearer than the last. */
  rigs: Map<string, OfRig>;
}

export const noTackle = (): Tackle => ({ setUp: {}, rigs: new Map() });

/**
 * The tackle after a change; the one before is not to be used again. What is not known stays absent,
 * whatever is added to it.
 * @param planned the rigs as they were made up before fishing
 */
export function changeTackle(
  tackle: Tackle,
  change: StatementOf<"change">,
  planned: readonly PlanRig[] = [],
): Tackle {
  const setUp: SetUp = pickUp(tackle, change.rig);
  const made = change.rig !== undefined && planned.find(({ name }) => name === change.rig);
  if (made) put(setUp, "depthMm", setUp.depthMm ?? made.depthMm);
  put(setUp, "depthMm", change.depthMm ?? moved(setUp.depthMm, change.depthByMm));
  put(setUp, "distanceMm", change.distanceMm ?? moved(setUp.distanceMm, change.distanceByMm));
  put(setUp, "lashMm", change.lashMm ?? moved(setUp.lashMm, change.lashByMm));
  if (change.hook !== undefined) setUp.hook = change.hook;
  if (change.bait !== undefined) {
    setUp.bait = change.bait;
    delete setUp.baitNote;
  }
  if (change.baitNote !== undefined) setUp.baitNote = change.baitNote;
  if (setUp.rig === undefined) return { setUp, rigs: tackle.rigs };
  return { setUp, rigs: tackle.rigs.set(setUp.rig, ofRig(setUp)) };
}

/**
 * Naming a rig brings back its own depth, lash, hook and bait. A rig not fished before has a depth,
 * a lash and a hook nobody has said yet, and keeps the bait; the first rig named at all is the one
 * that was out already.
 */
function pickUp({ setUp, rigs }: Tackle, rig: string | undefined): SetUp {
  if (rig === undefined || rig === setUp.rig) return { ...setUp };
  if (setUp.rig === undefined && !rigs.has(rig)) return { ...setUp, rig };
  const own = rigs.get(rig);
  const { depthMm: _depth, lashMm: _lash, hook: _hook, ...kept } = setUp;
  if (own?.bait !== undefined) delete kept.baitNote;
  return { ...kept, rig, ...own };
}

function ofRig(setUp: SetUp): OfRig {
  const { rig: _rig, distanceMm: _distance, ...own } = setUp;
  return own;
}

/** A length after a step, or absent where it was unknown or the step leaves no length. */
function moved(from: number | undefined, byMm: number | undefined): number | undefined {
  if (from === undefined || byMm === undefined) return from;
  const to = from + byMm;
  return to > 0 ? to : undefined;
}

function put<K extends "depthMm" | "distanceMm" | "lashMm">(
  setUp: SetUp,
  name: K,
  value: number | undefined,
): void {
  if (value === undefined) delete setUp[name];
  else setUp[name] = value;
}
