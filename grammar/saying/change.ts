/** A change of set-up in English. */
import type { Amendable, StatementOf } from "../statement.ts";
import { sayLength, sayNumber } from "./quantities.ts";

type Change = Omit<StatementOf<"change">, "kind">;

/** The parts of a change, one for each field that it names. */
export function changeParts(change: Change | Amendable): string[] {
  const { rig, depthMm, depthByMm, distanceMm, distanceByMm, hook, bait, baitNote } = change;
  const { lashMm, lashByMm, unit } = change;
  const length = (mm: number) => sayLength(Math.abs(mm), unit?.length);
  return [
    rig && (/^\d+$/.test(rig) ? `rig ${rig}` : `the ${rig} rig`),
    depthMm && `depth ${length(depthMm)}`,
    depthByMm && `${length(depthByMm)} ${depthByMm < 0 ? "shallower" : "deeper"}`,
    distanceMm && `out to ${length(distanceMm)}`,
    distanceByMm && `${length(distanceByMm)} ${distanceByMm < 0 ? "closer in" : "further out"}`,
    hook && `size ${sayNumber(hook)} hook`,
    bait && `on the ${baitNote ? `${baitNote} ` : ""}${bait}`,
    lashMm && `lash ${length(lashMm)}`,
    lashByMm && `${length(lashByMm)} ${lashByMm < 0 ? "less" : "more"} lash`,
  ].filter((part): part is string => typeof part === "string");
}
