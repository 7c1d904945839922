import fc from "fast-check";
import { expect, test } from "vitest";
import { bestOver } from "../../src/analysis/seasons/over-sessions.ts";
import { biasFrom, UNKNOWN_BIAS, weighedNets } from "../../src/analysis/weights/bias.ts";
import { totalOf } from "../../src/analysis/weights/total.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { bitesOf } from "../../src/share/pictures/bites-of.ts";
import { biteSentences } from "../../src/share/pictures/bites-picture.tsx";
import { climbOf } from "../../src/share/pictures/climb-of.ts";
import { climbSentences } from "../../src/share/pictures/climb-picture.tsx";
import { clockHours, hoursSince } from "../../src/share/pictures/clock-hours.ts";
import { depthsOf } from "../../src/share/pictures/depths-of.ts";
import { hoursOf } from "../../src/share/pictures/hours-of.ts";
import { seasonRates, sessionRates, topRate } from "../../src/share/pictures/rates-of.ts";
import { rateSentences, verdictSentence } from "../../src/share/pictures/rates-picture.tsx";
import { judgementSentence, weighedOf } from "../../src/share/pictures/scales-picture.tsx";
import { depthTicks, rateTicks, waitTicks, weightTicks } from "../../src/share/pictures/ticks.ts";
import { entry, event, MINUTE_MS, SESSION, START } from "../log/session-script.ts";

const styles = { weight: "kg", length: "cm" } as const;
const at = (minutes: number) => START + minutes * MINUTE_MS;
const fold = (...events: LogEvent[]) => foldSession(SESSION, events);
const start = entry(0, { kind: "session", act: "start" });

const DAY = [
  start,
  entry(1, { kind: "change", depthMm: 600 }),
  entry(10, { kind: "fish", weightG: 500, count: 2 }),
  entry(20, { kind: "fish" }),
  entry(30, { kind: "loss", cause: "off" }),
  entry(40, { kind: "session", act: "pause" }),
  entry(50, { kind: "session", act: "resume" }),
  entry(60, { kind: "change", depthMm: 1200 }),
  entry(70, { kind: "fish", weightG: 700 }),
];
const day = fold(...DAY);
const weighed = fold(...DAY, event(80, { kind: "weigh", net: 1, weightG: 3000 }));

test("the climb is what was spoken, and its band ends where the bag does", () => {
  const climb = climbOf(day, at(90), UNKNOWN_BIAS);
  expect(climb).toMatchObject({ from: at(0), to: at(90) });
  expect(climb?.climb).toEqual([
    { at: at(10), value: 1000 },
    { at: at(70), value: 1700 },
  ]);
  expect(climb?.breaks).toEqual([{ from: at(40), to: at(50) }]);
  expect(climb?.rows).toEqual([
    { name: "Fish", at: [at(10), at(20), at(70)] },
    { name: "Lost", at: [at(30)] },
    { name: "Changes", at: [at(1), at(60)] },
  ]);
  const bag = totalOf(day, UNKNOWN_BIAS);
  expect(climb?.band.map((one) => one.at)).toEqual([at(10), at(20), at(70)]);
  expect(climb?.band.at(-1)?.lower).toBeCloseTo(bag.lower, 6);
  expect(climb?.band.at(-1)?.upper).toBeCloseTo(bag.upper, 6);
  const [first, second] = climb?.band ?? [];
  expect(first?.lower).toBeLessThan(1000);
  expect(first?.upper).toBeGreaterThan(1000);
  expect(second?.upper).toBeGreaterThan(first?.upper ?? 0);
});

test("a weighed net's band is what the scales said, shared out over its fish", () => {
  const climb = climbOf(weighed, at(90), UNKNOWN_BIAS);
  expect(climb?.band.at(-1)).toEqual({ at: at(70), lower: 3000, upper: 3000 });
  // The fish without a weight is taken to be like the other three.
  expect(climb?.band[0]?.lower).toBeCloseTo((3000 * 1000) / (1700 + 1700 / 3), 6);
  expect(climb?.band[0]?.lower).toBe(climb?.band[0]?.upper);
});

test("a turn is drawn where the pace surely changed, and too few fish say nothing", () => {
  expect(climbOf(day, at(90), UNKNOWN_BIAS)?.turn.is).toBe("too-few");
  const quiet = Array.from({ length: 3 }, (_, n) => entry(20 + 30 * n, { kind: "fish" }));
  const busy = Array.from({ length: 40 }, (_, n) => entry(121 + 2 * n, { kind: "fish" }));
  const session = fold(start, ...quiet, ...busy);
  const climb = climbOf(session, at(202), UNKNOWN_BIAS);
  if (climb?.turn.is !== "turned") throw new Error("No turn was found.");
  expect(Math.abs(climb.turn.at - at(120))).toBeLessThan(10 * MINUTE_MS);
  expect(climb.turn.after).toBeGreaterThan(10 * climb.turn.before);
  expect(climbSentences(climb, session, styles).join(" ")).toContain("The pace turned about");
  const even = Array.from({ length: 20 }, (_, n) => entry(5 + 10 * n, { kind: "fish" }));
  expect(climbOf(fold(start, ...even), at(202), UNKNOWN_BIAS)?.turn.is).toBe("none");
});

test("before the start there is nothing to draw", () => {
  const none = fold();
  expect(climbOf(none, at(0), UNKNOWN_BIAS)).toBeUndefined();
  expect(depthsOf(none, at(0))).toBeUndefined();
  expect(sessionRates("depth", none, at(0))).toMatchObject({ levels: [], verdict: "too-few" });
  expect(bitesOf("depth", none, at(0)).levels).toEqual([]);
  expect(weighedOf(none)).toEqual([]);
});

test("fish lie at the depth that was fished, and those before any depth are counted apart", () => {
  const session = fold(start, entry(0.5, { kind: "fish" }), ...DAY.slice(1));
  const depths = depthsOf(session, at(90));
  expect(depths?.caught).toEqual([
    { at: at(10), depth: 600, size: 500 },
    { at: at(20), depth: 600, size: 0 },
    { at: at(70), depth: 1200, size: 700 },
  ]);
  expect(depths?.lost).toEqual([{ at: at(30), depth: 600, size: 0 }]);
  expect(depths?.kept).toEqual([
    { from: at(1), to: at(40), depth: 600 },
    { from: at(50), to: at(60), depth: 600 },
    { from: at(60), to: at(90), depth: 1200 },
  ]);
  expect(depths?.unknown).toBe(1);
  expect(depths?.byDepth.map(({ level, fish, lost }) => [level, fish, lost])).toEqual([
    [600, 3, 1],
    [1200, 1, 0],
  ]);
});

test("rates stand in the order of their depth, few fish without a value", () => {
  const many = Array.from({ length: 12 }, (_, n) => entry(61 + n, { kind: "fish" }));
  const rates = sessionRates("depth", fold(...DAY.slice(0, 8), ...many), at(90));
  expect(rates.levels.map(({ level }) => level)).toEqual([600, 1200]);
  expect(rates.levels.map(({ fishPerHour }) => fishPerHour.tells)).toEqual([false, true]);
  expect(rates.leader?.level).toBe(1200);
  expect(verdictSentence(rates, styles)).toMatch(/^1\.2 m is best, with 9\d in 100\.$/);
  expect(rateSentences(rates, styles)[0]).toMatch(/^60 cm: too few to tell, up to \d+ an hour$/);
  expect(topRate(rates.levels)).toBe(rates.levels[1]?.fishPerHour.upper);
});

test("a level hardly fished does not stretch the scale of those that tell", () => {
  const wide = { level: 2, fish: 1, hours: 0.01 } as const;
  const fishPerHour = { tells: false, lower: 2, upper: 557 } as const;
  const told = { tells: true, value: 10, lower: 5, upper: 18 } as const;
  expect(
    topRate([
      { ...wide, fishPerHour },
      { ...wide, fishPerHour: told },
    ]),
  ).toBe(18);
  expect(topRate([{ ...wide, fishPerHour }])).toBe(557);
  expect(topRate([])).toBe(1);
});

test("rates over sessions say how many sessions they rest on", () => {
  const rates = seasonRates("depth", bestOver("depth", [day, weighed], at(90)));
  expect(rates.levels.map(({ level, sessions }) => [level, sessions])).toEqual([
    [600, 2],
    [1200, 2],
  ]);
});

test("how long bites took is told where enough drops were", () => {
  const drops = Array.from({ length: 11 }, (_, n) => [
    entry(2 + 8 * n, { kind: "drop" }),
    entry(2.5 + 8.25 * n, { kind: "sign", sort: "bite" }),
  ]).flat();
  const bites = bitesOf("depth", fold(start, ...drops), at(120));
  // Waits of 30 s, 45 s and so on: the sixth of eleven is 1 min 45 s.
  expect(biteSentences({ of: bites, styles })).toEqual([
    expect.stringMatching(/^not said: half had a bite within 1 min 45 s, \d.* to \d/),
  ]);
  const few = bitesOf("depth", fold(start, ...drops.slice(0, 4)), at(10));
  expect(biteSentences({ of: few, styles })).toEqual([
    "not said: too few to tell, 2 bites in 2 drops",
  ]);
});

test("what the scales say of the angler comes with its limits, and not from one net", () => {
  expect(judgementSentence(UNKNOWN_BIAS)).toContain("No net has been weighed yet");
  expect(judgementSentence(biasFrom(weighedNets([weighed])))).toMatch(/^Too few nets/);
  const nets = ["a", "b", "c", "d"].map((session) => ({
    session,
    spokenG: 10_000,
    weighedG: 12_500,
  }));
  // 10 spoken of 12.5 on the scales is a fifth low.
  const said = judgementSentence(biasFrom(nets));
  expect(Number(/about (\d+) % low/.exec(said)?.[1])).toBeGreaterThan(14);
  expect(Number(/about (\d+) % low/.exec(said)?.[1])).toBeLessThanOrEqual(20);
});

test("hours add up to the session", () => {
  const span = { from: at(0), to: at(90) };
  expect(hoursOf(day, span)).toEqual([
    { from: at(0), fish: 3, grams: 1000, lost: 1 },
    { from: at(60), fish: 1, grams: 700, lost: 0 },
  ]);
  expect(hoursOf(day, { ...span, to: at(60) + 1000 })).toHaveLength(1);
});

test("times of the clock lie within the session, not more than about six", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 * 60 }), (minutes) => {
      const span = { from: at(0), to: at(minutes) };
      const hours = clockHours(span);
      if (minutes >= 10) expect(hours.length).toBeGreaterThan(0);
      if (minutes > 180) expect(hours.every(({ name }) => name.endsWith(":00"))).toBe(true);
      expect(hours.length).toBeLessThanOrEqual(7);
      for (const hour of hours) {
        expect(hour.at).toBeGreaterThan(span.from);
        expect(hour.at).toBeLessThanOrEqual(span.to);
        expect(new Date(hour.at).getMinutes() % 5).toBe(0);
      }
      expect(hoursSince(span).every((hour) => hour.at > span.from && hour.at <= span.to)).toBe(
        true,
      );
    }),
  );
});

test.each([
  ["weight", (top: number) => weightTicks(top, "lb-oz")],
  ["weight in kilos", (top: number) => weightTicks(top, "kg")],
  ["depth", (top: number) => depthTicks(top, "in")],
  ["rate", rateTicks],
  ["wait", waitTicks],
] as const)("ticks of a %s go from nothing to the top, not too many", (_, ticksTo) => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50_000, noNaN: true }), (top) => {
      const ticks = ticksTo(top);
      expect(ticks[0]?.at).toBe(0);
      expect(ticks.at(-1)?.at).toBeGreaterThanOrEqual(top);
      expect(ticks.length).toBeGreaterThan(1);
      expect(ticks.length).toBeLessThanOrEqual(12);
      expect(new Set(ticks.map(({ name }) => name)).size).toBe(ticks.length);
    }),
  );
});
