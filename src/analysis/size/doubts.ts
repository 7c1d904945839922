/** Fish whose spoken length and weight can hardly belong together. */
import type { Entry } from "../../log/session.ts";
import { relationOf } from "./species.ts";
import { isDoubtful } from "./worked-out.ts";

/** Whether an entry is such a fish; never of a species without a relation, or without both values. */
function contradicts({ statement }: Entry): boolean {
  if (statement.kind !== "fish") return false;
  const { species, weightG, lengthMm } = statement;
  const relation = relationOf(species);
  if (!relation || weightG === undefined || lengthMm === undefined) return false;
  return isDoubtful({ weightG, lengthMm }, relation);
}

/** The entries to look at again, in their order. */
export const doubtfulFish = (entries: readonly Entry[]): Entry[] => entries.filter(contradicts);
