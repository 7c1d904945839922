/** Catch rates by a factor, ready to be set side by side. */
import { type Best, bestIn } from "../../analysis/best.ts";
import type { Factor, Level } from "../../analysis/effort/exposure.ts";
import type { Estimate } from "../../analysis/estimate.ts";
import type { SeasonBest } from "../../analysis/seasons/over-sessions.ts";
import type { Session } from "../../log/session.ts";
import { inOrder } from "./level-names.ts";

export interface LevelRate {
  level: Exclude<Level, undefined>;
  fish: number;
  hours: number;
  /** Where the rate rests on several. */
  sessions?: number;
  fishPerHour: Estimate;
}

export interface Rates {
  factor: Factor;
  levels: LevelRate[];
  /** Levels fished for less time than those shown. */
  more: number;
  verdict: Best["verdict"];
  /** The likeliest best, and how likely. */
  leader?: { level: LevelRate["level"]; chance: number };
}

/** More on one scale are not taken in at a glance. */
const MOST = 8;

/** One session's rates. Nothing to show where no level was named. */
export const sessionRates = (factor: Factor, session: Session, now: number): Rates =>
  ratesOf(factor, bestIn(factor, session, now));

/** Rates over sessions. */
export const seasonRates = (factor: Factor, best: SeasonBest): Rates => ratesOf(factor, best);

function ratesOf(factor: Factor, { verdict, ranked }: Best | SeasonBest): Rates {
  const shown = ranked.toSorted((one, other) => other.hours - one.hours).slice(0, MOST);
  const [leader] = ranked;
  return {
    factor,
    levels: inOrder(shown).map(({ chanceBest: _chance, ...level }) => level),
    more: ranked.length - shown.length,
    verdict,
    ...(leader && { leader: { level: leader.level, chance: leader.chanceBest } }),
  };
}

/** The end of a scale that shows the rates that are told whole, per hour. */
export function topRate(levels: readonly LevelRate[]): number {
  const told = levels.flatMap(({ fishPerHour }) => (fishPerHour.tells ? [fishPerHour.upper] : []));
  if (told.length > 0) return Math.max(...told);
  const finite = levels.map(({ fishPerHour }) => fishPerHour.upper).filter(Number.isFinite);
  return Math.max(1, ...finite);
}
