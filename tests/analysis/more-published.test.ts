/** Published and closed-form values beside those of the sums' own tests. */
import { describe, expect, test } from "vitest";
import { kaplanMeier, medianWait, type Wait } from "../../src/analysis/bites/kaplan-meier.ts";
import { logRank } from "../../src/analysis/bites/log-rank.ts";
import { changePoint } from "../../src/analysis/change/change-point.ts";
import {
  logNormalAbove,
  logNormalByMoments,
  logNormalInterval,
} from "../../src/analysis/distributions/lognormal.ts";
import { chancesBest } from "../../src/analysis/rates/chance-best.ts";
import {
  chanceFaster,
  chanceOfCount,
  countMoments,
} from "../../src/analysis/rates/gamma-poisson.ts";
import { garwood } from "../../src/analysis/rates/garwood.ts";
import { equalRatesP, fasterP, rateRatio } from "../../src/analysis/rates/two-rates.ts";
import { commonPrior, shrunkRate } from "../../src/analysis/seasons/shrinkage.ts";
import { quantile } from "../../src/analysis/sinking/bites-in-the-water.ts";
import { densityFromFall, fallSpeed } from "../../src/analysis/sinking/fall.ts";
import { waterAt } from "../../src/analysis/sinking/water.ts";
import { fitRelation } from "../../src/analysis/size/fit.ts";

/** A minus sign stands for a censored wait. */
const waits = (...times: number[]): Wait[] =>
  times.map((time) => ({ time: Math.abs(time), event: time > 0 }));

// R survival, `aml`: remission with and without maintenance (Miller 1997; values as printed by
// `summary(survfit)` and `survdiff` in its documentation, from memory).
describe("maintenance of remission", () => {
  const maintained = waits(9, 13, -13, 18, 23, -28, 31, 34, -45, 48, -161);
  const other = waits(5, 5, 8, 8, 12, -16, 23, 27, 30, 33, 43, 45);

  test("survival and its errors", () => {
    const steps = kaplanMeier(maintained);
    expect(steps.map(({ time }) => time)).toEqual([9, 13, 18, 23, 31, 34, 48]);
    const printed = [
      [0.909, 0.0867],
      [0.818, 0.1163],
      [0.716, 0.1397],
      [0.614, 0.1526],
      [0.491, 0.1642],
      [0.368, 0.1627],
      [0.184, 0.1535],
    ];
    for (const [place, [survival = 0, error = 0]] of printed.entries()) {
      expect(steps[place]?.survival).toBeCloseTo(survival, 3);
      expect(steps[place]?.error).toBeCloseTo(error, 4);
    }
  });

  test("medians and log-rank", () => {
    expect(medianWait(kaplanMeier(maintained))).toMatchObject({ tells: true, value: 31 });
    expect(medianWait(kaplanMeier(other))).toMatchObject({ tells: true, value: 23 });
    const test = logRank(maintained, other);
    expect(test.observed).toEqual([7, 11]);
    expect(test.expected[0]).toBeCloseTo(10.69, 2);
    expect(test.expected[1]).toBeCloseTo(7.31, 2);
    expect(test.tells && test.chiSquare).toBeCloseTo(3.4, 1);
    expect(test.tells && test.p).toBeCloseTo(0.0653, 4);
  });
});

test("a curve that rests at one half has its median in the middle of that time", () => {
  const curve = kaplanMeier(waits(1, 2, 3, 4, 5, 6));
  expect(medianWait(curve)).toMatchObject({ value: 3.5 });
  expect(medianWait(kaplanMeier(waits(1, 2, 3, 4, 5)))).toMatchObject({ value: 3 });
  const onlyHalf = kaplanMeier(waits(1, 2, 3, 4, 5, -9, -9, -9, -9, -9));
  expect(medianWait(onlyHalf)).toMatchObject({ value: 5 });
});

test("with none censored the curve is the share that is left", () => {
  const times = [3, 1, 4, 1, 5, 9, 2, 6];
  for (const { time, survival } of kaplanMeier(waits(...times))) {
    expect(survival).toBeCloseTo(times.filter((one) => one > time).length / times.length, 12);
  }
});

describe("closed forms", () => {
  test("Garwood's limits for none and one", () => {
    expect(garwood(0).upper).toBeCloseTo(-Math.log(0.025), 9);
    expect(garwood(1).lower).toBeCloseTo(-Math.log(0.975), 9);
    const { upper } = garwood(1);
    expect(Math.exp(-upper) * (1 + upper)).toBeCloseTo(0.025, 9);
    expect(garwood(0, 0.9).upper).toBeCloseTo(-Math.log(0.05), 9);
  });

  // Clopper & Pearson 1934: 5 of 10 gives 0.187086 to 0.812914 (table, from memory).
  test("two rates of five each in one time: Clopper and Pearson's odds", () => {
    const five = { count: 5, exposure: 1 };
    const { lower, upper } = rateRatio(five, five);
    expect(lower).toBeCloseTo(0.187086 / 0.812914, 5);
    expect(upper).toBeCloseTo(0.812914 / 0.187086, 4);
    expect(equalRatesP(five, five)).toBeCloseTo(1, 12);
  });

  test("all of n on the first of two equal times: one half to the n", () => {
    const [all, none] = [
      { count: 7, exposure: 2 },
      { count: 0, exposure: 2 },
    ];
    expect(fasterP(all, none)).toBeCloseTo(2 ** -7, 12);
    expect(equalRatesP(all, none)).toBeCloseTo(2 ** -6, 12);
  });

  test("of two exponential rates the first is higher by the share of the second's time", () => {
    expect(chanceFaster({ shape: 1, rate: 2 }, { shape: 1, rate: 3 })).toBeCloseTo(3 / 5, 12);
    const thrice = [1, 1, 1].map(() => ({ shape: 2.5, rate: 4 }));
    for (const chance of chancesBest(thrice)) expect(chance).toBeCloseTo(1 / 3, 3);
  });

  test("after one event in one hour the next hours' count is geometric", () => {
    const belief = { shape: 1, rate: 1 };
    for (const count of [0, 1, 2, 5]) {
      expect(chanceOfCount(count, 3, belief)).toBeCloseTo((1 / 4) * (3 / 4) ** count, 12);
    }
    expect(countMoments(3, belief)).toEqual({ mean: 3, variance: 12 });
  });

  test("a log-normal by its moments has them, and half of it above its median", () => {
    const { mu, sigma } = logNormalByMoments(7, 3);
    expect(Math.exp(mu + sigma ** 2 / 2)).toBeCloseTo(7, 12);
    expect(Math.expm1(sigma ** 2) * Math.exp(2 * mu + sigma ** 2)).toBeCloseTo(3, 12);
    expect(logNormalAbove(Math.exp(mu), { mu, sigma })).toBeCloseTo(0.5, 12);
    const { lower, upper } = logNormalInterval({ mu, sigma }, 0.95);
    expect(Math.sqrt(lower * upper)).toBeCloseTo(Math.exp(mu), 9);
  });

  test("a heavy ball falls by Newton's law", () => {
    // v² = 4/3 g d (ρ/ρ_w − 1) / 0.44 above Reynolds 1,000.
    const water = waterAt(20);
    const [diameter, density] = [0.008, 11_340];
    const newton = Math.sqrt(((4 / 3) * 9.80665 * diameter * (density / water.density - 1)) / 0.44);
    expect(fallSpeed({ diameter, density }, water)).toBeCloseTo(newton, 6);
    expect(densityFromFall(diameter, newton, water)).toBeCloseTo(density, 3);
  });

  // R `quantile(c(1, 3, 4, 9), c(0, .25, .5, .75, 1))`, type 7, by hand.
  test("quantiles between the nearest values", () => {
    const values = [1, 3, 4, 9];
    const got = [0, 0.25, 0.5, 0.75, 1].map((share) => quantile(values, share));
    expect(got).toEqual([1, 2.5, 3.5, 5.25, 9]);
    expect(quantile([6], 0.5)).toBe(6);
    expect(quantile([], 0.5)).toBe(0);
  });
});

describe("what cannot be told has its answer", () => {
  const none = { count: 3, exposure: 0 };
  const some = { count: 2, exposure: 1 };
  const anything = { tells: false, lower: 0, upper: Number.POSITIVE_INFINITY };

  test("rates without exposure", () => {
    for (const [one, other] of [
      [none, some],
      [some, none],
      [none, none],
    ] as const) {
      expect(equalRatesP(one, other)).toBe(1);
      expect(fasterP(one, other)).toBe(1);
      expect(rateRatio(one, other)).toEqual(anything);
    }
    expect(shrunkRate(none, commonPrior([none, none]))).toEqual(anything);
  });

  test("a fish of no weight or no length teaches no relation", () => {
    const fish = [20, 25, 30, 35, 40].map((cm) => ({ lengthMm: 10 * cm, weightG: 0.01 * cm ** 3 }));
    const fit = fitRelation(
      [...fish, { lengthMm: 300, weightG: 0 }, { lengthMm: 0, weightG: 9 }],
      "TL",
    );
    expect(fit).toMatchObject({ tells: true, b: expect.closeTo(3, 9), a: expect.closeTo(0.01, 9) });
    expect(fitRelation(fish.slice(1), "TL")).toEqual({ tells: false });
  });

  test("what does not fall", () => {
    const water = waterAt(10);
    expect(fallSpeed({ diameter: 0, density: 2000 }, water)).toBe(0);
    expect(fallSpeed({ diameter: 0.01, density: 900 }, water)).toBe(0);
    expect(densityFromFall(0.01, 0, water)).toBe(water.density);
  });

  test("a change among bins without exposure", () => {
    expect(changePoint(Array(9).fill({ count: 2, exposure: 0 }))).toEqual({ tells: false });
    const change = changePoint([
      { count: 9, exposure: 1 },
      { count: 0, exposure: 0 },
      { count: 0, exposure: 1 },
    ]);
    expect(change.tells && change.posterior.every(Number.isFinite)).toBe(true);
  });
});
