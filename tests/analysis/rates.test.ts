import { describe, expect, test } from "vitest";
import { gammaCdf } from "../../src/analysis/distributions/gamma.ts";
import { catchRates } from "../../src/analysis/rates/catch-rates.ts";
import { chancesBest } from "../../src/analysis/rates/chance-best.ts";
import { compareRates } from "../../src/analysis/rates/compare.ts";
import {
  chanceAbove,
  chanceFaster,
  chanceOfCount,
  countMoments,
  meanOf,
  updated,
  weakPrior,
} from "../../src/analysis/rates/gamma-poisson.ts";
import { garwood, poissonRate } from "../../src/analysis/rates/garwood.ts";
import { equalRatesP, fasterP, rateRatio } from "../../src/analysis/rates/two-rates.ts";
import { weightRate } from "../../src/analysis/rates/weight-rate.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, randomNumbers, sessionOf } from "./fixtures/session.ts";

/** Within `digits` significant digits of a printed figure. */
const near = (ours: number, printed: number, digits: number) =>
  expect(Math.abs(ours - printed)).toBeLessThanOrEqual(Math.abs(printed) * 10 ** -digits);

describe("Garwood limits", () => {
  // Garwood 1936; chi-square form, calc.
  test.each([
    [0, 0, 3.688879454],
    [1, 0.02531780798, 5.571643391],
    [2, 0.2422092785, 7.224687668],
    [3, 0.6186721229, 8.76727307],
    [4, 1.089865374, 10.24158868],
    [5, 1.62348639, 11.66833208],
    [6, 2.201894253, 13.05947402],
    [7, 2.814363052, 14.42267536],
    [8, 3.453832177, 15.76318922],
    [9, 4.115373097, 17.08480345],
    [10, 4.795388696, 18.39035604],
    [15, 8.395386133, 24.74021887],
    [20, 12.21651959, 30.8883779],
  ])("of %i", (count, lower, upper) => {
    const limits = garwood(count);
    near(limits.lower, lower, 9);
    near(limits.upper, upper, 9);
  });

  test("137 events in 24.19893 (R poisson.test, documentation example)", () => {
    const rate = poissonRate(137, 24.19893);
    near(rate.tells ? rate.value : Number.NaN, 5.661407343, 9);
    near(rate.lower, 4.753124805, 9);
    near(rate.upper, 6.692709334, 9);
  });

  test("two fish are too few to tell, and keep their limits", () => {
    const rate = poissonRate(2, 2);
    expect(rate).toEqual({
      tells: false,
      lower: expect.closeTo(0.12110463925, 9),
      upper: expect.closeTo(3.612343834, 9),
    });
  });

  test("no exposure leaves everything possible", () => {
    const everything = { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };
    expect(poissonRate(0, 0)).toEqual(everything);
    expect(poissonRate(9, 0)).toEqual(everything);
  });
});

describe("weight per hour", () => {
  test("with equal weights the limits are Garwood's", () => {
    const rate = weightRate(Array(8).fill(400), 2, { meanG: 400, variance: 0 });
    near(rate.lower, (garwood(8).lower * 400) / 2, 9);
    near(rate.upper, (garwood(8).upper * 400) / 2, 9);
    expect(rate.tells && rate.value).toBe(1600);
  });

  test("no fish: bounded by a typical one of the session, or by nothing", () => {
    expect(weightRate([], 2, { meanG: 500, variance: 0 })).toEqual({
      tells: false,
      lower: 0,
      upper: expect.closeTo((3.688879454 * 500) / 2, 5),
    });
    expect(weightRate([], 2, undefined).upper).toBe(Number.POSITIVE_INFINITY);
    expect(weightRate([500], 0, { meanG: 500, variance: 0 })).toEqual({
      tells: false,
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
    });
  });

  test("limits hold the truth as often as they say (simulated, uneven weights)", () => {
    const random = randomNumbers(7);
    const gap = () => -Math.log(1 - random());
    const trials = 2000;
    // One fish in five weighs 1,500 g, the others 300.
    const typical = { meanG: 540, variance: 0.2 * 0.8 * 1200 ** 2 };
    let held = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const weights: number[] = [];
      for (let time = gap(); time < 12; time += gap()) weights.push(random() < 0.2 ? 1500 : 300);
      const { lower, upper } = weightRate(weights, 12, typical);
      if (lower <= 540 && upper >= 540) held += 1;
    }
    expect(held / trials).toBeGreaterThan(0.94);
  });
});

describe("two rates", () => {
  const uranium = [
    { count: 11, exposure: 800 },
    { count: 21, exposure: 3011 },
  ] as const;

  test("11 in 800 against 21 in 3011 (R poisson.test documentation)", () => {
    const ratio = rateRatio(...uranium);
    near(ratio.tells ? ratio.value : Number.NaN, 1.97148809524, 10);
    near(ratio.lower, 0.858426403392, 9);
    near(ratio.upper, 4.277265943654, 9);
    near(equalRatesP(...uranium), 0.0796686330333, 10);
  });

  // Krishnamoorthy & Thomson 2004's cases, calc.
  test.each([
    [0, 3, 0.25],
    [2, 6, 0.2890625],
  ])("%i in 100 against %i in 100", (one, other, p) => {
    expect(equalRatesP({ count: one, exposure: 100 }, { count: other, exposure: 100 })).toBeCloseTo(
      p,
      12,
    );
    expect(equalRatesP({ count: other, exposure: 100 }, { count: one, exposure: 100 })).toBeCloseTo(
      p,
      12,
    );
  });

  test("60 in 51477.5 against 30 in 54308.7, one-sided (Gu et al. 2008)", () => {
    const p = fasterP({ count: 60, exposure: 51477.5 }, { count: 30, exposure: 54308.7 });
    near(p, 0.000428, 3);
    near(p, 0.00042805269, 7);
  });

  test("nothing seen, or one side empty, is too few to tell", () => {
    const none = { count: 0, exposure: 3 };
    expect(equalRatesP(none, none)).toBe(1);
    expect(rateRatio(none, none)).toEqual({
      tells: false,
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
    });
    const oneSided = rateRatio({ count: 9, exposure: 3 }, none);
    expect(oneSided).toMatchObject({ tells: false, upper: Number.POSITIVE_INFINITY });
    expect(oneSided.lower).toBeGreaterThan(1);
    expect(rateRatio({ count: 1, exposure: 1 }, { count: 1, exposure: 1 }).tells).toBe(false);
  });
});

describe("two levels", () => {
  test("a difference, told in three ways that agree", () => {
    const { tells, ratio, p, chanceFaster } = compareRates(
      { fish: 30, hours: 2 },
      { fish: 10, hours: 2 },
    );
    expect(tells).toBe(true);
    expect(ratio).toMatchObject({ tells: true, value: 3 });
    expect(ratio.lower).toBeGreaterThan(1);
    expect(p).toBeLessThan(0.01);
    expect(chanceFaster).toBeGreaterThan(0.99);
  });

  test("two fish, or a level not fished, are too few to tell", () => {
    expect(compareRates({ fish: 2, hours: 1 }, { fish: 0, hours: 1 })).toMatchObject({
      tells: false,
      p: 0.5,
      chanceFaster: 0.5,
      ratio: { tells: false },
    });
    expect(compareRates({ fish: 9, hours: 1 }, { fish: 0, hours: 0 })).toEqual({
      tells: false,
      p: 1,
      chanceFaster: 0.5,
      ratio: { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY },
    });
  });
});

describe("gamma-Poisson, Bayesian Data Analysis 3rd ed. §2.6", () => {
  const prior = { shape: 3, rate: 5 };

  test("3 events in exposure 2", () => {
    const belief = updated(prior, 3, 2);
    expect(belief).toEqual({ shape: 6, rate: 7 });
    expect(meanOf(belief)).toBeCloseTo(0.86, 2);
    near(chanceAbove(1, belief), 0.30070828, 7);
  });

  test("30 events in exposure 20", () => {
    const belief = updated(prior, 30, 20);
    expect(meanOf(belief)).toBeCloseTo(1.32, 10);
    near(chanceAbove(1, belief), 0.92854397, 7);
  });

  test("posterior predictive for exposure 2 (calc)", () => {
    const belief = { shape: 6, rate: 7 };
    const printed = [0.22137735, 0.2951698, 0.22957651, 0.13604534, 0.06802267, 0.030232298];
    for (const [count, chance] of printed.entries())
      near(chanceOfCount(count, 2, belief), chance, 7);
    const { mean, variance } = countMoments(2, belief);
    near(mean, 1.7142857, 7);
    near(variance, 2.2040816, 7);
  });

  test("no further exposure brings nothing", () => {
    expect([0, 1].map((count) => chanceOfCount(count, 0, prior))).toEqual([1, 0]);
    expect(countMoments(0, prior)).toEqual({ mean: 0, variance: 0 });
  });

  test("chance of being faster: equal beliefs one half, else the integral of one over the other", () => {
    expect(chanceFaster(prior, prior)).toBeCloseTo(0.5, 12);
    const [first, second] = [
      { shape: 6, rate: 4 },
      { shape: 9, rate: 8 },
    ];
    let integral = 0;
    const step = 0.001;
    for (let x = step / 2; x < 12; x += step) {
      const density =
        gammaCdf(x + step / 2, first.shape, first.rate) -
        gammaCdf(x - step / 2, first.shape, first.rate);
      integral += density * gammaCdf(x, second.shape, second.rate);
    }
    expect(chanceFaster(first, second)).toBeCloseTo(integral, 5);
    expect(chanceFaster(first, second) + chanceFaster(second, first)).toBeCloseTo(1, 12);
  });

  test("a weak prior is worth one event at the common pace", () => {
    expect(weakPrior(10, 5)).toEqual({ shape: 1, rate: 0.5 });
    expect(weakPrior(0, 5)).toEqual({ shape: 1, rate: 5 });
  });
});

describe("which of several is best", () => {
  test("of two it is the chance of being faster", () => {
    const beliefs = [
      { shape: 6, rate: 4 },
      { shape: 2, rate: 3 },
    ] as const;
    expect(chancesBest(beliefs)[0]).toBeCloseTo(chanceFaster(...beliefs), 12);
  });

  test("equal ones share, none and one are certain", () => {
    const beliefs = Array(4).fill({ shape: 3, rate: 2 });
    for (const chance of chancesBest(beliefs)) expect(chance).toBeCloseTo(0.25, 12);
    expect(chancesBest([])).toEqual([]);
    expect(chancesBest([{ shape: 1, rate: 1 }])).toEqual([1]);
  });

  test("many fish on two levels and none on a third: the same as a very fine integral", () => {
    const beliefs = [
      { shape: 1001, rate: 4 },
      { shape: 1061, rate: 4 },
      { shape: 1, rate: 0.01 },
    ];
    const steps = 8000;
    const below = beliefs.map(({ shape, rate }) =>
      Array.from({ length: steps + 1 }, (_, step) =>
        gammaCdf(1600 * (step / steps) ** 2, shape, rate),
      ),
    );
    const fine = below.map((own, place) =>
      own.slice(1).reduce((total, upTo, step) => {
        const others = below.filter((_, other) => other !== place);
        const under = others.reduce(
          (all, other) => (all * ((other[step] ?? 0) + (other[step + 1] ?? 0))) / 2,
          1,
        );
        return total + (upTo - (own[step] ?? 0)) * under;
      }, 0),
    );
    for (const [place, chance] of chancesBest(beliefs).entries()) {
      expect(Math.abs(chance - (fine[place] ?? 0))).toBeLessThan(0.001);
    }
  });

  test("of three it is what sampling finds", () => {
    // Sums of exponentials are gamma of whole shape.
    const random = randomNumbers(11);
    const beliefs = [
      { shape: 8, rate: 4 },
      { shape: 5, rate: 2 },
      { shape: 1, rate: 1 },
    ];
    const wins = [0, 0, 0];
    const trials = 40_000;
    for (let trial = 0; trial < trials; trial += 1) {
      const rates = beliefs.map(({ shape, rate }) => {
        let total = 0;
        for (let event = 0; event < shape; event += 1) total -= Math.log(1 - random());
        return total / rate;
      });
      const best = rates.indexOf(Math.max(...rates));
      wins[best] = (wins[best] ?? 0) + 1;
    }
    for (const [place, chance] of chancesBest(beliefs).entries()) {
      expect(chance).toBeCloseTo((wins[place] ?? 0) / trials, 1.7);
    }
  });
});

describe("catch rates of a session", () => {
  const depth = (mm: number): EntryStatement => ({ kind: "change", depthMm: mm });
  const fish: EntryStatement = { kind: "fish", weightG: 500 };

  test("fish and grams per hour, by depth, the unweighed filled in", () => {
    const session = sessionOf([
      [0, depth(400)],
      ...[5, 10, 15, 20, 25].map((minute) => [minute, fish] as const),
      [26, { kind: "fish" }],
      [30, depth(800)],
      [40, fish],
      [50, fish],
    ]);
    const [, shallow, deep] = catchRates("depth", session, at(60));
    expect(shallow).toMatchObject({
      level: 400,
      fish: 6,
      hours: 0.5,
      fishPerHour: { tells: true, value: 12 },
    });
    expect(shallow?.gramsPerHour).toMatchObject({ tells: true, value: 6000 });
    expect(deep).toMatchObject({
      level: 800,
      fish: 2,
      fishPerHour: { tells: false },
      gramsPerHour: { tells: false },
    });
  });

  test("an unstarted session has no rates", () => {
    expect(catchRates("rig", emptySession, at(5))).toEqual([]);
  });
});
