import { describe, expect, test } from "vitest";
import { changePoint } from "../../src/analysis/change/change-point.ts";
import {
  CUSUM_START,
  type Cusum,
  type CusumDesign,
  cusumAfter,
} from "../../src/analysis/change/cusum.ts";
import { sessionChange } from "../../src/analysis/change/session-change.ts";
import {
  moodAt,
  WATCH_START,
  type Watch,
  watchAfter,
  watchOf,
} from "../../src/analysis/change/watch.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { disasters, FIRST_YEAR } from "./fixtures/coal.ts";
import { at, emptySession, MINUTE, randomNumbers, sessionOf } from "./fixtures/session.ts";

const fish: EntryStatement = { kind: "fish", weightG: 500 };
const yearly = (counts: readonly number[]) => counts.map((count) => ({ count, exposure: 1 }));
const told = (change: ReturnType<typeof changePoint>) => {
  if (!change.tells) throw new Error("too few");
  return change;
};

describe("one change point in a Poisson rate", () => {
  test("coal-mining disasters: about 1890, 3.1 a year before, 0.9 after (Raftery & Akman 1986; Carlin, Gelfand & Smith 1992)", () => {
    const change = told(changePoint(yearly(disasters)));
    expect(Math.abs(FIRST_YEAR + change.mode - 1890)).toBeLessThanOrEqual(2);
    expect(Math.abs(change.before.value - 3.1)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(change.after.value - 0.9)).toBeLessThanOrEqual(0.1);
    expect(change.chance).toBeGreaterThan(0.999);
    expect(change.chanceSlower).toBeGreaterThan(0.999);
    expect(change.before.lower).toBeGreaterThan(change.after.upper);
  });

  test("the posterior adds up to 1, one chance for each bin but the last", () => {
    const { posterior } = told(changePoint(yearly(disasters)));
    expect(posterior).toHaveLength(disasters.length - 1);
    expect(posterior.reduce((all, chance) => all + chance, 0)).toBeCloseTo(1, 12);
  });

  test("read backwards the change is the same, the other way round", () => {
    const forwards = told(changePoint(yearly(disasters)));
    const backwards = told(changePoint(yearly(disasters.toReversed())));
    expect(backwards.mode).toBe(disasters.length - 2 - forwards.mode);
    expect(backwards.chanceSlower).toBeCloseTo(1 - forwards.chanceSlower, 12);
    expect(backwards.chance).toBeCloseTo(forwards.chance, 12);
  });

  test("the unit of exposure does not matter", () => {
    const days = told(changePoint(disasters.map((count) => ({ count, exposure: 365 }))));
    expect(days.chance).toBeCloseTo(told(changePoint(yearly(disasters))).chance, 10);
  });

  test("a steady count speaks against a change", () => {
    expect(told(changePoint(yearly(Array(60).fill(2)))).chance).toBeLessThan(0.3);
  });

  test("too few events, bins or time tell nothing", () => {
    const nothing = { tells: false };
    expect(changePoint([])).toEqual(nothing);
    expect(changePoint(yearly([9]))).toEqual(nothing);
    expect(changePoint(yearly([1, 0, 1]))).toEqual(nothing);
    expect(
      changePoint([
        { count: 5, exposure: 0 },
        { count: 5, exposure: 0 },
      ]),
    ).toEqual(nothing);
  });
});

describe("CUSUM", () => {
  const run = (readings: readonly number[], design: CusumDesign): Cusum[] => {
    let sums = CUSUM_START;
    return readings.map((reading) => {
      sums = cusumAfter(sums, reading, design);
      return sums;
    });
  };

  test("NIST/SEMATECH e-Handbook 6.3.2.3, first signal at 14", () => {
    const readings = [
      324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625,
      325.15, 328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
    ];
    const upper = [
      0, 0, 0, 0, 0.03, 0, 0, 0, 0, 0, 0, 0, 3.01, 4.94, 7.45, 10.63, 11.99, 14.44, 16.0, 19.04,
    ];
    const lower = [0, 0.01, 0, 0.33, 0, 0, 0.56, 0.72, 0.17, 0.25, 0.31];
    const sums = run(readings, { target: 325, allowance: 0.3175 });
    for (const [place, { above, below }] of sums.entries()) {
      expect(Math.abs(above - (upper[place] ?? Number.NaN))).toBeLessThanOrEqual(0.01);
      expect(Math.abs(below - (lower[place] ?? 0))).toBeLessThanOrEqual(0.01);
    }
    expect(sums.findIndex(({ above, below }) => Math.max(above, below) > 4.1959) + 1).toBe(14);
  });

  test("Montgomery & Runger table 16-8, no signal", () => {
    const readings = [
      102.0, 94.8, 98.3, 98.4, 102.0, 98.5, 99.0, 97.7, 100.0, 98.1, 101.3, 98.7, 101.1, 98.4, 97.0,
      96.7, 100.3, 101.4, 97.2, 101.0,
    ];
    const high = [2, 0, 0, 0, 2, 0.5, 0, 0, 0, 0, 1.3, 0, 1.1, 0, 0, 0, 0.3, 1.7, 0, 1.0];
    const low = [0, 3.2, 2.9, 2.5, 0, 0, 0, 0.3, 0, 0, 0, 0, 0, 0, 1.0, 2.3, 0, 0, 0.8, 0];
    for (const [place, { above, below }] of run(readings, { target: 99, allowance: 1 }).entries()) {
      expect(above).toBeCloseTo(high[place] ?? Number.NaN, 9);
      expect(below).toBeCloseTo(low[place] ?? Number.NaN, 9);
      expect(Math.max(above, below)).toBeLessThan(10);
    }
  });
});

describe("the live watch", () => {
  const every = (minutes: number, fishCount: number, from: Watch = WATCH_START): Watch => {
    let watch = from;
    for (let fish = 0; fish < fishCount; fish += 1)
      watch = watchAfter(watch, watch.lastMs + minutes * MINUTE);
    return watch;
  };

  test("two fish are too few to tell, whatever the silence", () => {
    expect(moodAt(every(5, 2), 500 * MINUTE)).toBe("too-few");
    expect(moodAt(WATCH_START, 0)).toBe("too-few");
    expect(moodAt(watchAfter(WATCH_START, 0, 9), 0)).toBe("too-few");
  });

  test("an even pace is steady, a long silence quiet, a burst on", () => {
    const even = every(5, 20);
    expect(moodAt(even, even.lastMs)).toBe("steady");
    expect(moodAt(even, even.lastMs + 10 * MINUTE)).toBe("steady");
    expect(moodAt(even, even.lastMs + 60 * MINUTE)).toBe("quiet");
    const burst = every(0.5, 12, even);
    expect(moodAt(burst, burst.lastMs)).toBe("on");
    expect(moodAt(burst, burst.lastMs + 15 * MINUTE)).toBe("steady");
  });

  test("fish logged together share the gap", () => {
    const [together, apart] = [
      watchAfter(every(5, 10), 80 * MINUTE, 3),
      every(10, 3, every(5, 10)),
    ];
    expect(together.fish).toBe(apart.fish);
    expect(together.sums.above).toBeGreaterThan(0);
  });

  test("false calls and delay are what is stated (simulated)", () => {
    const random = randomNumbers(3);
    const gap = () => -Math.log(1 - random()) * 5 * MINUTE;
    const land = (fishCount: number, times: number, watch: Watch, seen: (watch: Watch) => void) => {
      let now = watch;
      for (let fish = 0; fish < fishCount; fish += 1) {
        now = watchAfter(now, now.lastMs + gap() * times);
        seen(now);
      }
      return now;
    };
    const trials = 1000;
    let falseCalls = 0;
    let delay = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      let called = false;
      land(60, 1, WATCH_START, (watch) => {
        if (moodAt(watch, watch.lastMs) === "quiet") called = true;
      });
      if (called) falseCalls += 1;
      let noticed = false;
      land(
        30,
        4,
        land(20, 1, WATCH_START, () => {}),
        (watch) => {
          if (!noticed) delay += 1;
          if (moodAt(watch, watch.lastMs) === "quiet") noticed = true;
        },
      );
    }
    expect(falseCalls / trials).toBeLessThan(0.16);
    expect(delay / trials).toBeLessThan(7);
  });

  test("over a whole session it is the same, pauses out", () => {
    const lines = [5, 10, 15, 20, 25, 55].map((minute) => [minute, fish] as const);
    const session = sessionOf(lines, { pauses: [[26, 51]] });
    expect(watchOf(session, at(60))).toEqual(every(5, 6));
    expect(watchOf(emptySession, at(60))).toEqual(WATCH_START);
  });
});

describe("the change in a session", () => {
  test("is told in time by the clock, with rates per hour, pauses out", () => {
    const minutes = [...Array(20).keys()].map((place) => 2 * place + 1);
    const session = sessionOf([...minutes.map((minute) => [minute, fish] as const), [150, fish]], {
      pauses: [[60, 80]],
    });
    const change = sessionChange(session, at(180));
    if (!change.tells) throw new Error("too few");
    expect(Math.abs(change.at - at(40))).toBeLessThanOrEqual(5 * MINUTE);
    expect(change.chance).toBeGreaterThan(0.99);
    expect(change.before.value).toBeGreaterThan(25);
    expect(change.after.value).toBeLessThan(3);
  });

  test("needs fish and time", () => {
    expect(sessionChange(emptySession, at(10))).toEqual({ tells: false });
    expect(
      sessionChange(
        sessionOf([
          [1, fish],
          [2, fish],
        ]),
        at(10),
      ),
    ).toEqual({ tells: false });
  });
});
