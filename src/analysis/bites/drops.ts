/** Drops and how long each waited for its bite. */
import type { Entry, Session, SetUp } from "../../log/session.ts";
import { type Factor, type Level, setUpLevel } from "../effort/exposure.ts";
import type { Estimate } from "../estimate.ts";
import { groupBy } from "../group.ts";
import { kaplanMeier, medianWait, type SurvivalStep, type Wait } from "./kaplan-meier.ts";

/** A drop; `time` is in seconds, from the rig going in to the bite or to the drop's end. */
export interface Drop extends Wait {
  setUp: SetUp;
  at: number;
}

const MS_PER_SECOND = 1000;

/**
 * What ends a drop, and whether by a bite. A foul-hooked fish took nothing, a liner or a knock
 * leaves the rig fishing, and so does feeding.
 */
function endedBy({ statement }: Entry): "bite" | "none" | undefined {
  switch (statement.kind) {
    case "fish":
      return statement.foul ? "none" : "bite";
    case "loss":
      return statement.cause === "foul" ? "none" : "bite";
    case "sign":
      return statement.sort === "bite" || statement.sort === "missed" ? "bite" : undefined;
    case "drop":
    case "change":
    case "session":
      return "none";
    default:
      return undefined;
  }
}

/**
 * The drops of a session, in order of time. One that ends without a bite is censored: by the next
 * drop, a change of set-up, a pause or the end; one still in the water at `now` (milliseconds since
 * the epoch) likewise. A bite that was not spoken is timed by its fish, so it comes out late by the
 * time it took to land. Without spoken drops there are none.
 */
export function dropsOf(session: Session, now: number): Drop[] {
  const drops: Drop[] = [];
  let open: Entry | undefined;
  const close = (at: number, event: boolean) => {
    if (!open) return;
    const time = Math.max(0, at - open.at) / MS_PER_SECOND;
    drops.push({ time, event, setUp: open.setUp, at: open.at });
    open = undefined;
  };
  for (const entry of session.entries) {
    const end = endedBy(entry);
    if (end) close(entry.at, end === "bite");
    if (entry.statement.kind === "drop") open = entry;
  }
  close(session.endedAt ?? now, false);
  return drops;
}

export interface BiteTimes {
  level: Level;
  drops: readonly Drop[];
  curve: readonly SurvivalStep[];
  /** Seconds. */
  median: Estimate;
}

/** Time to a bite at each level of a factor, in order of first use. */
export const biteTimes = (
  factor: Exclude<Factor, "hour">,
  session: Session,
  now: number,
): BiteTimes[] =>
  [...groupBy(dropsOf(session, now), ({ setUp }) => setUpLevel(factor, setUp))].map(
    ([level, drops]) => {
      const curve = kaplanMeier(drops);
      return { level, drops, curve, median: medianWait(curve) };
    },
  );
