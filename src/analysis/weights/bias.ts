/** How far an angler's spoken weights lie off the scales, learnt net by net. */
import type { Session } from "../../log/session.ts";
import { normalHalfWidth } from "../distributions/normal.ts";
import { type NormalBelief, observed } from "../distributions/normal-belief.ts";
import { type Estimate, estimate, LEVEL, mean } from "../estimate.ts";
import { loadsOf } from "./loads.ts";

export interface Bias {
  /** Of the mean of ln(scales / spoken): above 0 the angler speaks too low. */
  belief: NormalBelief;
  /** Variance of a single net's ln(scales / spoken) about that mean. */
  perNet: number;
  /** Nets it was learnt from. */
  nets: number;
}

export interface WeighedNet {
  spokenG: number;
  weighedG: number;
}

/**
 * Before any net was weighed: people are taken to be a fifth off, either way, and one net to differ
 * from the next by a tenth. Choices of our own, without a source.
 */
export const UNKNOWN_BIAS: Bias = {
  belief: { mean: 0, variance: 0.2 ** 2 },
  perNet: 0.1 ** 2,
  nets: 0,
};

/** As many nets as the choice of `perNet` above is worth. */
const PRIOR_NETS = 4;

/** Two nets could agree by luck. */
const FEWEST_NETS = 3;

/**
 * The bias after some weighed nets, none being the prior itself. The spread between nets is a mean
 * of the prior's and the nets' own, weighted by their numbers (a scaled inverse-chi-square, its mean
 * taken for known); the mean follows by normal-normal updating. Weights in grams, > 0.
 * Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §2.5 and §2.6.
 */
export function biasFrom(nets: readonly WeighedNet[], prior = UNKNOWN_BIAS): Bias {
  const logs = nets.map(({ spokenG, weighedG }) => Math.log(weighedG / spokenG));
  if (logs.length === 0) return prior;
  const middle = mean(logs);
  const squares = logs.reduce((total, log) => total + (log - middle) ** 2, 0);
  const perNet = (PRIOR_NETS * prior.perNet + squares) / (PRIOR_NETS + logs.length - 1);
  return {
    belief: observed(prior.belief, logs, perNet),
    perNet,
    nets: prior.nets + logs.length,
  };
}

/** A net off by more than this factor is a slip of the finger or a fish never spoken of; our own choice. */
const SLIP = 3;

/**
 * The nets of some sessions that were both spoken of and weighed. Empty ones and slips teach nothing.
 */
export const weighedNets = (sessions: readonly Session[]): WeighedNet[] =>
  sessions.flatMap(loadsOf).flatMap(({ spokenG, weighedG = 0, unknown }) => {
    const credible = weighedG * SLIP > spokenG && weighedG < spokenG * SLIP;
    return credible && unknown === 0 ? [{ spokenG, weighedG }] : [];
  });

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
