/** What was fed of each bait. */
import type { Entry } from "../../log/session.ts";

export interface BaitUse {
  /** Grams that were named, and times bait went in without a weight named. */
  grams: number;
  unweighed: number;
}

/**
 * Adds an entry to the use by bait; one that is no feed adds nothing. "Fed twice, fifty grams" is a
 * hundred. A feed that names no bait counts for the bait on the hook, and for none if there is none.
 */
export function addBait(used: Map<string, BaitUse>, { statement, setUp }: Entry): void {
  if (statement.kind !== "feed") return;
  const bait = statement.bait ?? setUp.bait;
  if (bait === undefined) return;
  const { amountG, times = 1 } = statement;
  const { grams, unweighed } = used.get(bait) ?? { grams: 0, unweighed: 0 };
  used.set(
    bait,
    amountG === undefined
      ? { grams, unweighed: unweighed + times }
      : { grams: grams + amountG * times, unweighed },
  );
}

/** Use by bait over some entries, baits in order of first use. */
export function baitUsed(entries: readonly Entry[]): Map<string, BaitUse> {
  const used = new Map<string, BaitUse>();
  for (const entry of entries) addBait(used, entry);
  return used;
}
