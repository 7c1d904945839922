/** Fish and weight per hour at each level of a factor. */
import type { Session } from "../../log/session.ts";
import { type Exposure, exposuresBy, type Factor } from "../effort/exposure.ts";
import type { Estimate } from "../estimate.ts";
import { groupBy } from "../group.ts";
import { type FilledWeight, fillWeights } from "../weights/fill.ts";
import { typicalFish } from "../weights/typical.ts";
import { poissonRate } from "./garwood.ts";
import { weightRate } from "./weight-rate.ts";

export interface CatchRate extends Exposure {
  fishPerHour: Estimate;
  /** Spoken weights, with those not said filled in. */
  gramsPerHour: Estimate;
}

/**
 * Catch rates by a factor, in order of first use; exact limits, so that few fish look like few fish.
 * A level names its value from `FEWEST_EVENTS` fish on. Needs a started session; `now` in
 * milliseconds since the epoch.
 */
export function catchRates(factor: Factor, session: Session, now: number): CatchRate[] {
  const { fish } = fillWeights(session.entries);
  const typical = typicalFish(fish);
  const byEntry = groupBy(fish, ({ entry }) => entry);
  return exposuresBy(factor, session, now).map((exposure) => ({
    ...exposure,
    fishPerHour: poissonRate(exposure.fish, exposure.hours),
    gramsPerHour: weightRate(
      exposure.entries.flatMap((entry) => (byEntry.get(entry) ?? []).flatMap(singly)),
      exposure.hours,
      typical,
    ),
  }));
}

const singly = ({ eachG, count }: FilledWeight): number[] => Array<number>(count).fill(eachG);
