import type { Interval } from "../../analysis/estimate.ts";
import { biasFrom, weighedNets } from "../../analysis/weights/bias.ts";
import { totalOf } from "../../analysis/weights/total.ts";
import type { Session } from "../../log/session.ts";

/**
 * The limits of the bag in grams, with what this session's own scales have taught about the spoken
 * weights; undefined while there is no weight to speak of.
 */
export function bagLimits(session: Session): Interval | undefined {
  const { lower, upper } = totalOf(session, biasFrom(weighedNets([session])));
  return upper > 0 && session.spokenG > 0 ? { lower, upper } : undefined;
}
