/** Rates by a factor over many sessions. */
import type { Session } from "../../log/session.ts";
import { type Best, type Contender, rank, type Trial } from "../best.ts";
import type { Factor } from "../effort/exposure.ts";
import { sum } from "../estimate.ts";
import { groupBy } from "../group.ts";
import { type PastSession, pastOf } from "./past.ts";
import { commonPrior, shrunk, shrunkRate } from "./shrinkage.ts";

export interface SeasonContender extends Contender {
  /** Sessions in which the level was fished. */
  sessions: number;
}

export interface SeasonBest extends Best {
  ranked: readonly SeasonContender[];
}

const countedOf = ({ fish, hours }: Trial) => ({ count: fish, exposure: hours });

/**
 * Levels of a factor over past sessions, ranked by the chance of being best, their rates drawn toward
 * the common one so that one lucky hour does not lead. Sessions are pooled: a level that was only
 * ever fished on a good day profits from the day, which `sessions` lets one see. No session, or no
 * time fished, ranks nothing.
 */
export const bestOverPast = (factor: Factor, past: readonly PastSession[]): SeasonBest =>
  bestOverTrials(past.flatMap(({ trials }) => trials[factor]));

/** The same from what was tried; a session, or a peg, gives one trial of each level it fished. */
export function bestOverTrials(all: readonly Trial[]): SeasonBest {
  const byLevel = groupBy(all, ({ level }) => level);
  const trials = [...byLevel].map(
    ([level, ofLevel]): Trial => ({
      level,
      fish: sum(ofLevel.map(({ fish }) => fish)),
      hours: sum(ofLevel.map(({ hours }) => hours)),
    }),
  );
  const prior = commonPrior(trials.map(countedOf));
  const { verdict, ranked } = rank(
    trials,
    (trial) => shrunk(countedOf(trial), prior),
    (trial) => shrunkRate(countedOf(trial), prior),
  );
  const withSessions = ranked.map((contender) => ({
    ...contender,
    sessions: byLevel.get(contender.level)?.filter(({ hours }) => hours > 0).length ?? 0,
  }));
  return { verdict, ranked: withSessions };
}

/** The same from the sessions themselves; `now` (milliseconds since the epoch) ends those that still last. */
export const bestOver = (factor: Factor, sessions: readonly Session[], now: number): SeasonBest =>
  bestOverPast(
    factor,
    sessions.flatMap((session) => pastOf(session, now) ?? []),
  );
