/** A set-up in the fewest words, for a glance. */
import type { SetUp } from "../../log/session.ts";
import { formatDistance, formatLength, type LengthStyle } from "../../ui/format.ts";

export interface Part {
  name: string;
  value: string;
}

/** What is known of a set-up, in the order in which it is changed most. */
export function setUpParts(setUp: SetUp, length: LengthStyle): Part[] {
  const { rig, depthMm, distanceMm, bait, baitNote, hook, lashMm } = setUp;
  const parts: [name: string, value: string | undefined][] = [
    ["Rig", rig],
    ["Depth", depthMm === undefined ? undefined : formatLength(depthMm, length)],
    ["Out", distanceMm === undefined ? undefined : formatDistance(distanceMm)],
    ["Bait", bait && [baitNote, bait].filter(Boolean).join(" ")],
    ["Hook", hook === undefined ? undefined : String(hook)],
    ["Lash", lashMm === undefined ? undefined : formatLength(lashMm, length)],
  ];
  return parts.flatMap(([name, value]) => (value === undefined ? [] : [{ name, value }]));
}
