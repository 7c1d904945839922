/** How the levels of a factor are written. */
import type { Factor, Level } from "../../analysis/effort/exposure.ts";
import { formatDistance, formatLength, type LengthStyle } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";

const { rates } = chartWords;

/** "rig 2", "60 cm", "11 m", "hook 16", "pellet", "hour 3". */
export function levelName(factor: Factor, level: Exclude<Level, undefined>, length: LengthStyle) {
  if (factor === "depth") return formatLength(Number(level), length);
  if (factor === "distance") return formatDistance(Number(level));
  if (factor === "hour") return rates.hour(Number(level));
  if (factor === "hook") return rates.hook(Number(level));
  const name = String(level);
  return factor === "rig" && /^\d+$/.test(name) ? rates.rig(name) : name;
}

/** Levels in an order that can be looked up: by size where they have one, else the most fished first. */
export function inOrder<T extends { level: Exclude<Level, undefined>; hours: number }>(
  levels: readonly T[],
): T[] {
  return levels.toSorted((one, other) =>
    typeof one.level === "number" && typeof other.level === "number"
      ? one.level - other.level
      : other.hours - one.hours,
  );
}
