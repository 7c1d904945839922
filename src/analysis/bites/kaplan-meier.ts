/** How long until it happens, when some waits ended before it did. */
import { normalHalfWidth } from "../distributions/normal.ts";
import { type Estimate, estimate, FEWEST_EVENTS, type Interval, LEVEL } from "../estimate.ts";

/** A wait of `time` (≥ 0, any unit); without its event it is censored: it lasted at least so long. */
export interface Wait {
  time: number;
  event: boolean;
}

/** The curve after one time at which events fell. */
export interface SurvivalStep extends Interval {
  time: number;
  /** Waits that had lasted until then, and events among them. */
  atRisk: number;
  events: number;
  /** Chance that a wait lasts longer, with Greenwood's standard error. */
  survival: number;
  error: number;
}

/**
 * The Kaplan-Meier curve: one step for each time with an event, none without events. Limits are on
 * the log-log scale, so they stay within 0 and 1; once nothing is left the last upper limit stands.
 * Source: Kaplan & Meier 1958, J. Am. Stat. Assoc. 53:457; Greenwood 1926; limits after Kalbfleisch
 * & Prentice (from memory).
 */
export function kaplanMeier(waits: readonly Wait[], level = LEVEL): SurvivalStep[] {
  const sorted = waits.toSorted((one, other) => one.time - other.time);
  const half = normalHalfWidth(level);
  const steps: SurvivalStep[] = [];
  let survival = 1;
  let greenwood = 0;
  let upper = 1;
  for (let place = 0; place < sorted.length; ) {
    const time = sorted[place]?.time ?? 0;
    const atRisk = sorted.length - place;
    let events = 0;
    for (; sorted[place]?.time === time; place += 1) events += sorted[place]?.event ? 1 : 0;
    if (events === 0) continue;
    survival *= 1 - events / atRisk;
    greenwood += events / (atRisk * (atRisk - events));
    const limits = logLogLimits(survival, greenwood, half);
    upper = limits?.upper ?? upper;
    const error = survival === 0 ? 0 : survival * Math.sqrt(greenwood);
    steps.push({ time, atRisk, events, survival, error, lower: limits?.lower ?? 0, upper });
  }
  return steps;
}

function logLogLimits(survival: number, greenwood: number, half: number): Interval | undefined {
  if (survival === 0) return undefined;
  const reach = Math.exp((half * Math.sqrt(greenwood)) / Math.log(survival));
  return { lower: survival ** (1 / reach), upper: survival ** reach };
}

/** Products of fractions miss one half by less than this. */
const ROUNDING = 1e-9;

/** When the curve comes down to one half; while it stays there, the middle of that time. */
function middleOf(steps: readonly SurvivalStep[]): number | undefined {
  const place = steps.findIndex(({ survival }) => survival <= 0.5 + ROUNDING);
  const [step, next] = [steps[place], steps[place + 1]];
  if (!step) return undefined;
  const stays = step.survival >= 0.5 - ROUNDING && next;
  return stays ? (step.time + next.time) / 2 : step.time;
}

/**
 * The median wait: when the curve comes down to one half, its limits when theirs do; Infinity where
 * the upper one never does. Needs `FEWEST_EVENTS` events and half of the waits to have ended.
 * Sources: Brookmeyer & Crowley 1982, Biometrics 38:29; for a curve that rests at one half, R
 * survival `quantile.survfit` (from memory).
 */
export function medianWait(steps: readonly SurvivalStep[]): Estimate {
  const firstAtHalf = (of: "lower" | "upper") => steps.find((step) => step[of] <= 0.5)?.time;
  const events = steps.reduce((total, step) => total + step.events, 0);
  const middle = middleOf(steps);
  return estimate(events >= FEWEST_EVENTS && middle !== undefined, middle ?? 0, {
    lower: firstAtHalf("lower") ?? steps.at(-1)?.time ?? 0,
    upper: firstAtHalf("upper") ?? Number.POSITIVE_INFINITY,
  });
}
