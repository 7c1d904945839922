import { describe, expect, test } from "vitest";
import { biteTimes, dropsOf } from "../../src/analysis/bites/drops.ts";
import { kaplanMeier, medianWait, type Wait } from "../../src/analysis/bites/kaplan-meier.ts";
import { logRank } from "../../src/analysis/bites/log-rank.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, sessionOf } from "./fixtures/session.ts";

const wait =
  (event: boolean) =>
  (time: number): Wait => ({ time, event });

// Freireich 1963; data in Introductory Biostatistics, Ex. 11.1, and R MASS::gehan.
const treated = [
  ...[6, 6, 6, 7, 10, 13, 16, 22, 23].map(wait(true)),
  ...[6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35].map(wait(false)),
];
const placebo = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23].map(
  wait(true),
);

describe("Kaplan-Meier", () => {
  test("6-MP remission times (Freireich 1963; R MASS::gehan)", () => {
    const printed = [
      [6, 21, 3, 0.857143, 0.0763604],
      [7, 17, 1, 0.806723, 0.0869353],
      [10, 15, 1, 0.752941, 0.0963497],
      [13, 12, 1, 0.690196, 0.1068147],
      [16, 11, 1, 0.627451, 0.1140539],
      [22, 7, 1, 0.537815, 0.1282338],
      [23, 6, 1, 0.448179, 0.1345915],
    ] as const;
    const steps = kaplanMeier(treated);
    expect(steps).toHaveLength(printed.length);
    for (const [place, [time, atRisk, events, survival, error]] of printed.entries()) {
      expect(steps[place]).toMatchObject({ time, atRisk, events });
      expect(steps[place]?.survival).toBeCloseTo(survival, 6);
      expect(steps[place]?.error).toBeCloseTo(error, 6);
    }
  });

  test("medians 23 and 8 weeks", () => {
    expect(medianWait(kaplanMeier(treated))).toMatchObject({
      tells: true,
      value: 23,
      upper: Number.POSITIVE_INFINITY,
    });
    const untreated = medianWait(kaplanMeier(placebo));
    expect(untreated).toMatchObject({ tells: true, value: 8 });
    expect(untreated.lower).toBeLessThan(8);
    expect(untreated.upper).toBeGreaterThan(8);
  });

  test("without censoring it is the share still waiting", () => {
    for (const { time, survival } of kaplanMeier(placebo)) {
      expect(survival).toBeCloseTo(
        placebo.filter((one) => one.time > time).length / placebo.length,
        12,
      );
    }
  });

  test("limits hold the curve and never leave 0 to 1, also at the end", () => {
    for (const step of [...kaplanMeier(treated), ...kaplanMeier(placebo)]) {
      expect(step.lower).toBeGreaterThanOrEqual(0);
      expect(step.lower).toBeLessThanOrEqual(step.survival);
      expect(step.upper).toBeGreaterThanOrEqual(step.survival);
      expect(step.upper).toBeLessThanOrEqual(1);
    }
  });

  test("nothing, nothing but censored ones, and two are too few to tell", () => {
    expect(medianWait(kaplanMeier([]))).toEqual({
      tells: false,
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
    });
    expect(kaplanMeier([5, 6].map(wait(false)))).toEqual([]);
    expect(medianWait(kaplanMeier([5, 6].map(wait(true)))).tells).toBe(false);
    for (const step of kaplanMeier([3, 3].map(wait(true))))
      expect(Object.values(step).some(Number.isNaN)).toBe(false);
  });
});

describe("log-rank", () => {
  test("6-MP against placebo: χ² 16.79 (Freireich 1963; R survival)", () => {
    const result = logRank(treated, placebo);
    if (!result.tells) throw new Error("too few");
    expect(result.observed).toEqual([9, 21]);
    expect(result.expected[0]).toBeCloseTo(19.250501, 6);
    expect(result.expected[1]).toBeCloseTo(10.749499, 6);
    expect(result.chiSquare).toBeCloseTo(16.79294099, 7);
    expect(result.p).toBeCloseTo(4.16881e-5, 10);
  });

  test("the order of the groups does not matter", () => {
    const [one, other] = [logRank(treated, placebo), logRank(placebo, treated)];
    expect(one.tells && one.chiSquare).toBeCloseTo(
      (other.tells && other.chiSquare) || Number.NaN,
      9,
    );
  });

  test("too few events, or a group that is empty, tells nothing", () => {
    expect(logRank([], []).tells).toBe(false);
    expect(logRank(treated, []).tells).toBe(false);
    expect(logRank([wait(true)(3)], [wait(true)(4)]).tells).toBe(false);
  });
});

describe("drops of a session", () => {
  const drop: EntryStatement = { kind: "drop" };

  test("a bite, a miss, a fish or a loss ends a drop; all else censors or leaves it", () => {
    const session = sessionOf([
      [0, drop],
      [1, { kind: "sign", sort: "liner" }],
      [2, { kind: "feed" }],
      [3, { kind: "sign", sort: "bite" }],
      [4, { kind: "fish" }],
      [5, drop],
      [7, { kind: "fish", foul: true }],
      [8, drop],
      [9, drop],
      [10, { kind: "change", depthMm: 500 }],
      [11, drop],
      [15, { kind: "loss", cause: "pulled" }],
      [16, drop],
      [17, { kind: "loss", cause: "foul" }],
      [18, drop],
      [19, { kind: "session", act: "pause" }],
      [20, drop],
    ]);
    expect(dropsOf(session, at(24)).map(({ time, event }) => [time / 60, event])).toEqual([
      [3, true],
      [2, false],
      [1, false],
      [1, false],
      [4, true],
      [1, false],
      [1, false],
      [4, false],
    ]);
  });

  test("bite times by depth; without spoken drops there are none", () => {
    const bite = (minute: number): [number, EntryStatement][] => [
      [minute, drop],
      [minute + 0.5, { kind: "fish" }],
    ];
    const session = sessionOf([
      [0, { kind: "change", depthMm: 400 }],
      ...[1, 2, 3, 4, 5, 6].flatMap(bite),
      [10, { kind: "change", depthMm: 900 }],
      ...[11, 12].flatMap(bite),
    ]);
    const [shallow, deep] = biteTimes("depth", session, at(20));
    expect(shallow).toMatchObject({ level: 400, median: { tells: true, value: 30 } });
    expect(deep).toMatchObject({ level: 900, median: { tells: false } });
    expect(biteTimes("depth", emptySession, at(20))).toEqual([]);
    expect(dropsOf(sessionOf([[3, { kind: "fish" }]]), at(20))).toEqual([]);
  });
});
