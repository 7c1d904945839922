/** The live watch: how often it calls without cause, and how soon it calls with one. */
import {
  type Mood,
  moodAt,
  moodSums,
  WATCH_START,
  type Watch,
  watchAfter,
} from "../../src/analysis/change/watch.ts";
import { MINUTE, START } from "../analysis/fixtures/session.ts";
import { type Day, drawDay, sessionAt } from "./day.ts";
import { AS_ASSUMED, type DayKind } from "./days.ts";
import { drawAngler } from "./fishing.ts";
import { randomOf } from "./random.ts";
import { quantile, shareOf } from "./tally.ts";
import { DAY_MIN, plainWater, type Turn } from "./water.ts";

type Called = Extract<Mood, "quiet" | "on">;

/** The watch as it stands at the end of each minute of a day. */
function watched<T>(day: Day, look: (watch: Watch, fishedMs: number) => T): T[] {
  const fish = sessionAt(day, DAY_MIN).entries.filter(({ statement }) => statement.kind === "fish");
  let watch = WATCH_START;
  let next = 0;
  return Array.from({ length: DAY_MIN }, (_, place) => {
    const now = (place + 1) * MINUTE;
    for (let one = fish[next]; one && one.at - START <= now; one = fish[next]) {
      watch = watchAfter(watch, one.at - START);
      next += 1;
    }
    return look(watch, now);
  });
}

/** The first minute for which it is so, counted from 1; undefined if for none. */
function firstMinute<T>(minutes: readonly T[], isSo: (minute: T) => boolean): number | undefined {
  const place = minutes.findIndex(isSo);
  return place < 0 ? undefined : place + 1;
}

/** When a mood was first called; undefined if never. */
const firstCall = (day: Day, mood: Called): number | undefined =>
  firstMinute(watched(day, moodAt), (one) => one === mood);

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

/** What a limit of the watch gives. */
export interface AtLimit {
  limit: number;
  /** Share of steady days with a false call. */
  falseCalls: number;
  /** Median minutes until a turn is called, for each turn tried. */
  delays: readonly number[];
}

/** What other limits of one of the watch's sums would give, for turns to so many times the pace. */
export function otherLimits(
  mood: Called,
  limits: readonly number[],
  turns: readonly number[],
  count: number,
  seed: number,
  fishPerHour: number,
): AtLimit[] {
  const days = (turn?: Turn) =>
    [...plainDays(count, seed, fishPerHour, ONE_PLACE, turn)].map((day) =>
      watched(day, (watch, fishedMs) => moodSums(watch, fishedMs)?.[mood] ?? 0),
    );
  const steady = days();
  const turned = turns.map((times) => days({ minute: TURN_MIN, times }));
  return limits.map((limit) => {
    const passes = (sums: readonly number[]) => firstMinute(sums, (sum) => sum > limit);
    const delays = turned.map((ofTurn) =>
      ofTurn
        .map((sums) => (passes(sums) ?? Number.POSITIVE_INFINITY) - TURN_MIN)
        .filter((delay) => delay > 0),
    );
    return {
      limit,
      falseCalls: shareOf(steady, (sums) => passes(sums) !== undefined),
      delays: delays.map((ofTurn) => quantile(ofTurn, 0.5)),
    };
  });
}
