/** What is in each net by the angler's own words, with gaps filled in. */
import type { Session } from "../../log/session.ts";
import { groupBy } from "../group.ts";
import { type FilledWeight, fillWeights } from "./fill.ts";

export interface Load {
  net: number;
  /** Grams as spoken and filled in, before any bias; and the variance of what was filled in. */
  spokenG: number;
  variance: number;
  /** Fish that count, and those among them of which no weight could be worked out. */
  fish: number;
  unknown: number;
  /** What the scales said. */
  weighedG?: number;
}

const massOf = (fish: readonly FilledWeight[]) => ({
  spokenG: fish.reduce((total, { eachG, count }) => total + eachG * count, 0),
  variance: fish.reduce((total, one) => total + one.variance * one.count, 0),
});

/** The session's nets, in its order. */
export function loadsOf(session: Session): Load[] {
  const byNet = groupBy(fillWeights(session.entries).fish, ({ entry }) => entry.net);
  return session.nets.map(({ number, count, weighedG }) => {
    const filled = byNet.get(number) ?? [];
    const known = filled.reduce((total, one) => total + one.count, 0);
    return {
      net: number,
      ...massOf(filled),
      fish: count,
      unknown: count - known,
      ...(weighedG === undefined ? {} : { weighedG }),
    };
  });
}
