/** What was fed of each bait. */
import type { Entry } from "../../log/session.ts";

export interface BaitUse {
  /** Grams that were named, and times bait went in without a weight named. */
  grams: number;
  unweighed: number;
}

/**
 * Use by bait. "Fed twice, fifty grams" is a hundred. A feed that names no bait counts for the bait
 * on the hook, and for none if there is none.
 */
export function baitUsed(entries: readonly Entry[]): Map<string, BaitUse> {
  const used = new Map<string, BaitUse>();
  for (const { statement, setUp } of entries) {
    if (statement.kind !== "feed") continue;
    const bait = statement.bait ?? setUp.bait;
    if (bait === undefined) continue;
    const { amountG, times = 1 } = statement;
    const { grams, unweighed } = used.get(bait) ?? { grams: 0, unweighed: 0 };
    used.set(
      bait,
      amountG === undefined
        ? { grams, unweighed: unweighed + times }
        : { grams: grams + amountG * times, unweighed },
    );
  }
  return used;
}
