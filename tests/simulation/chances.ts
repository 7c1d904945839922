/** Chances that the sums tell, each with what then was so. */
import { bestIn } from "../../src/analysis/best.ts";
import { biteTimes } from "../../src/analysis/bites/drops.ts";
import { logRank } from "../../src/analysis/bites/log-rank.ts";
import { paceOf } from "../../src/analysis/pace.ts";
import { catchRates } from "../../src/analysis/rates/catch-rates.ts";
import { compareRates } from "../../src/analysis/rates/compare.ts";
import { at } from "../analysis/fixtures/session.ts";
import { gramsAt, sessionAt } from "./day.ts";
import type { Simulated } from "./days.ts";
import type { Random } from "./random.ts";
import { type Call, shareOf } from "./tally.ts";
import { DAY_MIN } from "./water.ts";

const NOW = at(DAY_MIN);

/** One depth against another, with what chance it is the faster. */
export function fasterCalls({ day }: Simulated): Call[] {
  const [one, other] = day.water.places;
  const rates = catchRates("depth", sessionAt(day, DAY_MIN), NOW);
  const [first, second] = [one, other].map((place) =>
    rates.find(({ level }) => level === place?.depthMm),
  );
  if (!first || !second || !other) return [];
  const { tells, chanceFaster } = compareRates(first, second);
  return tells ? [{ chance: chanceFaster, came: one.bitesPerHour > other.bitesPerHour }] : [];
}

/** Each depth, with what chance it is the best of all. */
export function bestCalls({ day }: Simulated): Call[] {
  const [best] = day.water.places.toSorted((one, other) => other.bitesPerHour - one.bitesPerHour);
  const { verdict, ranked } = bestIn("depth", sessionAt(day, DAY_MIN), NOW);
  if (verdict === "too-few") return [];
  return ranked.map(({ level, chanceBest }) => ({
    chance: chanceBest,
    came: level === best?.depthMm,
  }));
}

/** Targets are so many times what is in the net by word half-way; none leans on what is yet to come. */
const TARGETS = [1.2, 3] as const;

/** With what chance a target is reached, half-way through the day. */
export function targetCalls({ day, learnt }: Simulated, random: Random): Call[] {
  const half = DAY_MIN / 2;
  const { spokenG } = sessionAt(day, half);
  const targetG = Math.max(1, spokenG * random.between(...TARGETS));
  const { needed } = paceOf(sessionAt(day, half, { endsAt: NOW, targetG }), at(half), learnt);
  if (needed?.chance === undefined) return [];
  return [{ chance: needed.chance, came: gramsAt(day, DAY_MIN) >= targetG }];
}

/** Share of tests that find a difference at 1 in 20 between depths that bite alike. */
export function falseFinds(days: Iterable<Simulated>): { rates: number; waits: number } {
  const found = [...days].map(({ day }) => {
    const session = sessionAt(day, DAY_MIN);
    const [one, other] = catchRates("depth", session, NOW).filter(({ hours }) => hours > 0);
    const [first, second] = biteTimes("depth", session, NOW);
    const waits = first && second ? logRank(first.drops, second.drops) : undefined;
    return {
      rates: one && other ? compareRates(one, other).p <= 0.05 : false,
      waits: waits?.tells ? waits.p <= 0.05 : false,
    };
  });
  return {
    rates: shareOf(found, ({ rates }) => rates),
    waits: shareOf(found, ({ waits }) => waits),
  };
}
