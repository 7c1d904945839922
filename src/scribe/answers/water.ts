/** What the water does: how deep and how fast they bite, and whether the fishing has turned. */
import { dropsOf } from "../../analysis/bites/drops.ts";
import { kaplanMeier, medianWait } from "../../analysis/bites/kaplan-meier.ts";
import { sessionChange } from "../../analysis/change/session-change.ts";
import { FEWEST_EVENTS } from "../../analysis/estimate.ts";
import { inTheWater } from "../../analysis/sinking/bites-in-the-water.ts";
import { biteDepths } from "../../analysis/sinking/session-bites.ts";
import { answerWords as say } from "../../words/answers.ts";
import { type Asking, NOT_STARTED, same, type Words } from "./asking.ts";
import {
  clockWords,
  count,
  depthWords,
  fishWords,
  oddsWords,
  rateWords,
  timeWords,
  waitWords,
} from "./words.ts";

export function biteTime({ session, now }: Asking): Words {
  if (session.startedAt === undefined) return NOT_STARTED;
  const drops = dropsOf(session, now);
  if (drops.length === 0) return same(say.noDrops);
  const curve = kaplanMeier(drops);
  const bites = drops.filter(({ event }) => event).length;
  const of = [count(bites, "bite"), count(drops.length, "timed drop")] as const;
  if (bites < FEWEST_EVENTS) return same(say.tooFewBites(...of));
  const median = medianWait(curve);
  if (!median.tells) return same(say.biteTimeAtLeast(of[1]));
  const upper = Number.isFinite(median.upper) ? waitWords(median.upper) : undefined;
  const range = upper
    ? say.range(waitWords(median.lower), upper)
    : say.orMore(waitWords(median.lower));
  const short = say.biteTime(waitWords(median.value), range);
  return { short, full: `${short}${say.bitesOfDrops(...of)}`, sure: say.biteTimeSure(range) };
}

export function biteDepth({ session, now, units }: Asking): Words {
  if (session.startedAt === undefined) return NOT_STARTED;
  const speeds = session.plan.fallSpeeds ?? {};
  const speedOf = (bait: string | undefined) =>
    bait !== undefined && Object.hasOwn(speeds, bait) ? speeds[bait] : undefined;
  const depths = biteDepths(session, now, (setUp) => speedOf(setUp.bait));
  const { bait } = session.setUp;
  if (depths.length === 0 && speedOf(bait) === undefined)
    return same(bait === undefined ? say.noBait : say.noFallSpeed(bait));
  const { bites, onTheDrop, drop } = inTheWater(depths);
  const all = count(bites, "bite");
  if (bites < FEWEST_EVENTS) return same(say.tooFewDeep(all));
  if (!drop) return same(onTheDrop === 0 ? say.allSettled(all) : say.mostlySettled(all, onTheDrop));
  const [middle, lower, upper] = [drop.middleMm, drop.lower, drop.upper].map((mm) =>
    depthWords(Math.max(1, mm), units),
  ) as [string, string, string];
  return same(say.onTheDrop(String(onTheDrop), all, middle, say.range(lower, upper)));
}

/** The chance from which a turn is told of; our own choice. */
const TURNED = 0.8;

export function mood({ session, sums, now }: Asking): Words {
  if (session.startedAt === undefined) return NOT_STARTED;
  const until = session.endedAt ?? now;
  const { fish, lastMs } = sums.watch;
  const mood = sums.moodAt(until);
  if (mood === "too-few") return same(say.moodTooFew(fishWords(session.count)));
  const usual = waitWords(lastMs / Math.max(1, fish) / 1000);
  const gap = timeWords(Math.max(0, until - (session.lastFishAt ?? session.startedAt)));
  const head = { quiet: say.quiet(gap, usual), on: say.cameOn(usual), steady: say.steady(usual) };
  const change = sessionChange(session, now);
  if (!change.tells || change.chance < TURNED) return same(head[mood]);
  const { at, before, after, chance } = change;
  const turn = say.turned(
    clockWords(at),
    rateWords(before.value),
    rateWords(after.value),
    oddsWords(chance),
  );
  return { short: `${head[mood]}${turn}`, full: `${head[mood]}${turn}`, sure: turn.trim() };
}
