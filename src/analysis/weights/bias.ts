/** How far an angler's spoken weights lie off the scales, learnt net by net and session by session. */
import type { Session } from "../../log/session.ts";
import { normalHalfWidth } from "../distributions/normal.ts";
import { type NormalBelief, observed } from "../distributions/normal-belief.ts";
import { type Estimate, estimate, LEVEL, mean, sum } from "../estimate.ts";
import { groupBy } from "../group.ts";
import { type Load, loadsOf } from "./loads.ts";

export interface Bias {
  /** Of the mean of ln(scales / spoken): above 0 the angler speaks too low. */
  belief: NormalBelief;
  /** Variance of one session's ln(scales / spoken) about that mean: all its nets share it. */
  perSession: number;
  /** Variance of a single net's about its session's. */
  perNet: number;
  /** Nets it was learnt from. */
  nets: number;
}

export interface WeighedNet {
  /** Tells nets of one session from those of another. */
  session: string;
  spokenG: number;
  weighedG: number;
}

/**
 * Before any net was weighed: people are taken to be a fifth off, either way, and one net to differ
 * from the next by a tenth, the most of it by the day. Choices of our own, without a source.
 */
export const UNKNOWN_BIAS: Bias = {
  belief: { mean: 0, variance: 0.2 ** 2 },
  perSession: 0.09 ** 2,
  perNet: 0.05 ** 2,
  nets: 0,
};

/** As many sessions, or nets, as the choice of either spread above is worth. */
const PRIOR_WORTH = 4;

/** Two nets could agree by luck. */
const FEWEST_NETS = 3;

/** Squares about the mean. */
function scatterOf(values: readonly number[]): number {
  const middle = mean(values);
  return sum(values.map((value) => (value - middle) ** 2));
}

/**
 * A variance after squares with so many degrees of freedom: the mean of the prior's and their own,
 * weighted by their numbers (a scaled inverse-chi-square, its mean taken for known).
 * Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §2.6.
 */
const varianceAfter = (prior: number, squares: number, freedom: number): number =>
  (PRIOR_WORTH * prior + squares) / (PRIOR_WORTH + freedom);

/**
 * The bias after some weighed nets, none being the prior itself. Nets of one session say the same of
 * the day, so a session's mean counts once: as precise as its own spread and that of its nets allow.
 * The mean follows by normal-normal updating. Weights in grams; a net without any on either side
 * says nothing.
 * Source: Bayesian Data Analysis, 3rd ed., §2.5 and, for the two levels, §5.4.
 */
export function biasFrom(nets: readonly WeighedNet[], prior = UNKNOWN_BIAS): Bias {
  const weighed = nets.filter(({ spokenG, weighedG }) => spokenG > 0 && weighedG > 0);
  if (weighed.length === 0) return prior;
  const sessions = [...groupBy(weighed, ({ session }) => session).values()].map((ofSession) =>
    ofSession.map(({ spokenG, weighedG }) => Math.log(weighedG / spokenG)),
  );
  const others = sessions.length - 1;
  const perNet = varianceAfter(
    prior.perNet,
    sum(sessions.map(scatterOf)),
    weighed.length - sessions.length,
  );
  // The means of a few nets scatter by the nets' own spread too.
  const byNets = (others / sessions.length) * sum(sessions.map(({ length }) => perNet / length));
  const scatter = scatterOf(sessions.map(mean)) - byNets;
  const perSession = varianceAfter(prior.perSession, Math.max(0, scatter), others);
  const belief = sessions.reduce(
    (before, logs) => observed(before, [mean(logs)], perSession + perNet / logs.length),
    prior.belief,
  );
  return { belief, perSession, perNet, nets: prior.nets + weighed.length };
}

/** A net off by more than this factor is a slip of the finger or a fish never spoken of; our own choice. */
const SLIP = 3;

/** The nets of a session that were both spoken of and weighed. Empty ones and slips teach nothing. */
export const weighedIn = (session: string, loads: readonly Load[]): WeighedNet[] =>
  loads.flatMap(({ spokenG, weighedG = 0, unknown }) => {
    const credible = weighedG * SLIP > spokenG && weighedG < spokenG * SLIP;
    return credible && unknown === 0 ? [{ session, spokenG, weighedG }] : [];
  });

/** The same of some sessions. */
export const weighedNets = (sessions: readonly Session[]): WeighedNet[] =>
  sessions.flatMap((session) => weighedIn(session.id, loadsOf(session)));

/**
 * The factor from spoken to scales, on the whole. Names a value from `FEWEST_NETS` nets on.
 */
export function biasFactor({ belief, nets }: Bias, level = LEVEL): Estimate {
  const half = normalHalfWidth(level) * Math.sqrt(belief.variance);
  return estimate(nets >= FEWEST_NETS, Math.exp(belief.mean), {
    lower: Math.exp(belief.mean - half),
    upper: Math.exp(belief.mean + half),
  });
}
