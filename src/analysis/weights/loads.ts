/** What is in each net by the angler's own words, with gaps filled in. */
import type { Net, Session } from "../../log/session.ts";
import { type CatchTally, tallyOf } from "./catch-tally.ts";
import { filledSums, fillersOf } from "./fill.ts";
import { type Typical, typicalOf } from "./typical.ts";

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

/** The nets' loads, in their order. The cost grows with the kinds of fish, not with their number. */
export function loadsFrom(tally: CatchTally, nets: readonly Net[]): Load[] {
  const fillerOf = fillersOf(tally);
  return nets.map(({ number, count, weighedG }) => {
    const { totalG, variance, unknown } = filledSums(tally.inNet(number), fillerOf);
    return {
      net: number,
      spokenG: totalG,
      variance,
      fish: count,
      unknown,
      ...(weighedG === undefined ? {} : { weighedG }),
    };
  });
}

/** One more fish like those in the tally, filled in or said; undefined while none was weighed. */
export const typicalIn = (tally: CatchTally): Typical | undefined =>
  typicalOf(filledSums(tally.kinds, fillersOf(tally)));

/** The session's nets, in its order. */
export const loadsOf = (session: Session): Load[] =>
  loadsFrom(tallyOf(session.entries), session.nets);
