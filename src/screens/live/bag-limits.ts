import type { Interval } from "../../analysis/estimate.ts";
import { Running } from "../../analysis/running.ts";
import { massEstimate, massOf } from "../../analysis/weights/total.ts";
import type { Session } from "../../log/session.ts";
import type { PastSession } from "../app/past.ts";

/** Between which weights the bag lies, after all nets that were weighed; carried on from fish to fish. */
export class BagLimits {
  readonly #sums = new Running();

  /** In grams; undefined while there is no weight to speak of. */
  of(session: Session, past: readonly PastSession[]): Interval | undefined {
    const sums = this.#sums.follow(session);
    const bias = sums.biasAfter(past.flatMap(({ nets }) => nets));
    const { lower, upper } = massEstimate(massOf(sums.loads, bias));
    return upper > 0 && session.spokenG > 0 ? { lower, upper } : undefined;
  }
}
