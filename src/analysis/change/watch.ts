/** A live watch for the fishing going quiet, or coming on: a CUSUM over the gaps between fish. */
import type { Session } from "../../log/session.ts";
import { fishedStretches, fishedUpTo } from "../effort/stretches.ts";
import { FEWEST_EVENTS } from "../estimate.ts";
import { CUSUM_START, type Cusum, type CusumDesign, cusumAfter } from "./cusum.ts";

export interface Watch {
  fish: number;
  /** Milliseconds fished, pauses out, when the last fish came. */
  lastMs: number;
  sums: Cusum;
}

export type Mood = "quiet" | "on" | "steady" | "too-few";

export const WATCH_START: Watch = { fish: 0, lastMs: 0, sums: CUSUM_START };

/**
 * Gaps are told in mean gaps of the session so far, so the target is 1. An allowance of one half is
 * the best for gaps that grow about 2.4 times or shrink about 3.5 times: the likelihood-ratio sum
 * of exponential gaps r times as long takes off ln(r) r / (r − 1) each. Source: Lucas 1985, "Counted
 * data CUSUM's", Technometrics 27:129 (from memory; the formula follows from the densities).
 */
const GAPS: CusumDesign = { target: 1, allowance: 0.5 };

/**
 * Decision limits, in mean gaps, chosen by the simulated tables of DEVELOPERS.md ("Gone quiet, come
 * on") for warnings that are spoken unasked: at ten fish an hour about one steady session in twenty
 * has a false call of quiet and one in fifty of on.
 */
const QUIET_LIMIT = 8;
const ON_LIMIT = 2.5;

/**
 * A gap in mean gaps of the fish before it; undefined while there are too few to know one. One fish
 * less than there were keeps the pace from being taken too high, as the time ends with a fish.
 */
const inMeanGaps = ({ fish, lastMs }: Watch, gapMs: number): number | undefined =>
  fish < FEWEST_EVENTS || lastMs === 0 ? undefined : (gapMs * (fish - 1)) / lastMs;

/**
 * The watch after `count` fish that were logged together at `fishedMs` milliseconds fished (not
 * before the last); they share the gap evenly. Takes the same time however long the session is.
 */
export function watchAfter(watch: Watch, fishedMs: number, count = 1): Watch {
  const gap = inMeanGaps(watch, (fishedMs - watch.lastMs) / count);
  let { sums } = watch;
  for (let fish = 0; fish < count && gap !== undefined; fish += 1) {
    sums = cusumAfter(sums, gap, GAPS);
  }
  return { fish: watch.fish + count, lastMs: fishedMs, sums };
}

/**
 * The sums that speak for quiet and for on at `fishedMs` milliseconds fished, in mean gaps; undefined
 * while there are too few fish. The gap that still lasts speaks for quiet and against on, never the
 * other way.
 */
export function moodSums(
  watch: Watch,
  fishedMs: number,
): Record<Exclude<Mood, "steady" | "too-few">, number> | undefined {
  const gap = inMeanGaps(watch, fishedMs - watch.lastMs);
  if (gap === undefined) return undefined;
  const withGap = cusumAfter(watch.sums, gap, GAPS);
  return {
    quiet: Math.max(watch.sums.above, withGap.above),
    on: Math.min(watch.sums.below, withGap.below),
  };
}

/** How it stands at `fishedMs` milliseconds fished. */
export function moodAt(watch: Watch, fishedMs: number): Mood {
  const sums = moodSums(watch, fishedMs);
  if (!sums) return "too-few";
  if (sums.quiet > QUIET_LIMIT) return "quiet";
  return sums.on > ON_LIMIT ? "on" : "steady";
}

/** The watch over a whole session, for when an earlier entry was corrected. */
export function watchOf(session: Session, now: number): Watch {
  const stretches = fishedStretches(session, now);
  return session.entries.reduce(
    (watch, { at, statement }) =>
      statement.kind === "fish"
        ? watchAfter(watch, fishedUpTo(stretches, at), statement.count ?? 1)
        : watch,
    WATCH_START,
  );
}
