/** Which level of a factor catches best, and how sure that is. */
import type { Session } from "../log/session.ts";
import { type Exposure, exposuresBy, type Factor, type Level } from "./effort/exposure.ts";
import { type Estimate, FEWEST_EVENTS, sum } from "./estimate.ts";
import { chancesBest } from "./rates/chance-best.ts";
import { levelPrior, type RateBelief, updated } from "./rates/gamma-poisson.ts";
import { poissonRate } from "./rates/garwood.ts";

export interface Contender {
  level: Exclude<Level, undefined>;
  fish: number;
  hours: number;
  fishPerHour: Estimate;
  /** Chance that its true rate is the highest of all. */
  chanceBest: number;
}

/**
 * "clear": the first is best with a chance of `CLEAR` or more. "close": enough fish, no such leader.
 * "alone": nothing to hold the one level against. "too-few": too few fish to rank anything.
 */
export type BestVerdict = "clear" | "close" | "alone" | "too-few";

export interface Best {
  verdict: BestVerdict;
  /** Likeliest best first; of more than `MOST_RANKED`, those fished longest. */
  ranked: readonly Contender[];
}

/** The chance from which a leader is called one; our own choice. */
const CLEAR = 0.8;

/**
 * The work grows with the third power of their number, and no angler tries as many: a log that names
 * thousands must not stop the phone. Our own choice.
 */
export const MOST_RANKED = 60;

/** What a level must bring to be ranked. */
export type Trial = Pick<Exposure, "level" | "fish" | "hours">;

/**
 * Ranks levels by the chance of being best. `beliefOf` says what is believed of a level's rate per
 * hour, `rateOf` what is shown of it. Levels that the set-up did not name are left out.
 */
export function rank(
  trials: readonly Trial[],
  beliefOf: (trial: Trial) => RateBelief,
  rateOf: (trial: Trial) => Estimate,
): Best {
  const named = longest(
    trials.filter(({ level, hours, fish }) => level !== undefined && hours + fish > 0),
  );
  if (sum(named.map(({ hours }) => hours)) <= 0) return { verdict: "too-few", ranked: [] };
  const chances = chancesBest(named.map(beliefOf));
  const ranked = named
    .flatMap((trial, place): Contender[] => {
      const { level, fish, hours } = trial;
      if (level === undefined) return [];
      return [{ level, fish, hours, fishPerHour: rateOf(trial), chanceBest: chances[place] ?? 0 }];
    })
    .toSorted((one, other) => other.chanceBest - one.chanceBest);
  return { verdict: verdictOn(ranked), ranked };
}

const longest = (trials: readonly Trial[]): readonly Trial[] =>
  trials.length <= MOST_RANKED
    ? trials
    : trials.toSorted((one, other) => other.hours - one.hours).slice(0, MOST_RANKED);

function verdictOn(ranked: readonly Contender[]): BestVerdict {
  const [leader] = ranked;
  if (!leader || sum(ranked.map(({ fish }) => fish)) < FEWEST_EVENTS) return "too-few";
  if (ranked.length === 1) return "alone";
  if (leader.chanceBest < CLEAR) return "close";
  return leader.fish < FEWEST_EVENTS ? "too-few" : "clear";
}

/**
 * The best level of a factor in one session, by fish per hour. Every level starts from a belief worth
 * a few fish at the common pace, so that a level hardly tried is neither praised nor written off.
 * Needs a started session and `FEWEST_EVENTS` fish, as many with a leader that is to be named.
 */
export function bestIn(factor: Factor, session: Session, now: number): Best {
  const exposures = exposuresBy(factor, session, now);
  const named = exposures.filter(({ level }) => level !== undefined);
  const prior = levelPrior(
    sum(named.map(({ fish }) => fish)),
    sum(named.map(({ hours }) => hours)),
  );
  return rank(
    named,
    ({ fish, hours }) => updated(prior, fish, hours),
    ({ fish, hours }) => poissonRate(fish, hours),
  );
}
