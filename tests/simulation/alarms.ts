/** The live watch: how often it calls without cause, and how soon it calls with one. */
import { type Mood, moodAt, WATCH_START, watchAfter } from "../../src/analysis/change/watch.ts";
import { MINUTE, START } from "../analysis/fixtures/session.ts";
import { type Day, drawDay, sessionAt } from "./day.ts";
import { AS_ASSUMED, type DayKind } from "./days.ts";
import { drawAngler } from "./fishing.ts";
import { randomOf } from "./random.ts";
import { quantile, shareOf } from "./tally.ts";
import { DAY_MIN, plainWater, type Turn } from "./water.ts";

type Called = Extract<Mood, "quiet" | "on">;

/** When a mood was first called, looked at every minute; undefined if never. */
function firstCall(day: Day, mood: Called): number | undefined {
  const fish = sessionAt(day, DAY_MIN).entries.filter(({ statement }) => statement.kind === "fish");
  let watch = WATCH_START;
  let next = 0;
  for (let minute = 1; minute <= DAY_MIN; minute += 1) {
    for (let one = fish[next]; one && one.at - START <= minute * MINUTE; one = fish[next]) {
      watch = watchAfter(watch, one.at - START);
      next += 1;
    }
    if (moodAt(watch, minute * MINUTE) === mood) return minute;
  }
  return undefined;
}

const ONE_PLACE: DayKind = { ...AS_ASSUMED, moves: false };

function* plainDays(count: number, seed: number, fishPerHour: number, kind: DayKind, turn?: Turn) {
  for (let place = 0; place < count; place += 1) {
    const random = randomOf(seed + place);
    const water = plainWater(fishPerHour, kind.spellSpread, random, turn);
    yield drawDay(kind, water, drawAngler(kind.anglerSpread, random), random);
  }
}

export interface FalseCalls {
  quiet: number;
  on: number;
}

/** Share of steady five-hour days on which each mood is called at all. */
export function falseCalls(
  count: number,
  seed: number,
  fishPerHour: number,
  differing: Partial<DayKind> = {},
): FalseCalls {
  const days = [...plainDays(count, seed, fishPerHour, { ...ONE_PLACE, ...differing })];
  const called = (mood: Called) => shareOf(days, (day) => firstCall(day, mood) !== undefined);
  return { quiet: called("quiet"), on: called("on") };
}

export interface Delay {
  /** Days on which nothing had been called before the turn. */
  days: number;
  /** Share of them on which the turn was called before the day's end. */
  called: number;
  /** Minutes until half, and nine tenths, of those days had their call; Infinity for too few. */
  half: number;
  most: number;
}

const TURN_MIN = 120;

/** How soon a turn after two hours is called. */
export function delayOf(count: number, seed: number, fishPerHour: number, times: number): Delay {
  const mood = times < 1 ? "quiet" : "on";
  const turn = { minute: TURN_MIN, times };
  const calls = [...plainDays(count, seed, fishPerHour, ONE_PLACE, turn)]
    .map((day) => firstCall(day, mood) ?? Number.POSITIVE_INFINITY)
    .filter((minute) => minute > TURN_MIN);
  const delays = calls.map((minute) => minute - TURN_MIN);
  return {
    days: delays.length,
    called: shareOf(delays, Number.isFinite),
    half: quantile(delays, 0.5),
    most: quantile(delays, 0.9),
  };
}
