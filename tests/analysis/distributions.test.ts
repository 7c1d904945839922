import { describe, expect, test } from "vitest";
import { betaCdf, betaQuantile } from "../../src/analysis/distributions/beta.ts";
import { gammaCdf, gammaInterval, gammaQuantile } from "../../src/analysis/distributions/gamma.ts";
import {
  logNormalAbove,
  logNormalByMoments,
  logNormalInterval,
} from "../../src/analysis/distributions/lognormal.ts";
import {
  chiSquareTail1,
  normalCdf,
  normalHalfWidth,
} from "../../src/analysis/distributions/normal.ts";

describe("the library held against closed forms", () => {
  test.each([1, 2, 5, 40])("gamma of whole shape %i is a Poisson tail", (shape) => {
    for (const x of [0.1, 1, 4.5, 38, 60]) {
      let term = Math.exp(-x);
      let tail = 1;
      for (let count = 0; count < shape; count += 1) {
        tail -= term;
        term *= x / (count + 1);
      }
      expect(gammaCdf(x, shape, 1)).toBeCloseTo(tail, 12);
    }
  });

  test.each([
    [1, 3],
    [4, 2],
    [7, 9],
  ])("beta(%i, %i) is a binomial tail", (a, b) => {
    for (const x of [0.05, 0.3, 0.5, 0.91]) {
      const n = a + b - 1;
      let tail = 0;
      for (let hits = a; hits <= n; hits += 1)
        tail += choose(n, hits) * x ** hits * (1 - x) ** (n - hits);
      expect(betaCdf(x, a, b)).toBeCloseTo(tail, 12);
    }
  });

  test("quantiles undo their distribution functions", () => {
    for (const p of [0.025, 0.5, 0.975]) {
      for (const shape of [0.5, 1, 3, 250])
        expect(gammaCdf(gammaQuantile(p, shape, 2), shape, 2)).toBeCloseTo(p, 9);
      expect(betaCdf(betaQuantile(p, 2.5, 8), 2.5, 8)).toBeCloseTo(p, 9);
    }
    expect(gammaInterval(1, 1, 0.95).upper).toBeCloseTo(-Math.log(0.025), 9);
  });

  test("the normal's known points", () => {
    expect(normalHalfWidth(0.95)).toBeCloseTo(1.959963984540054, 10);
    expect(normalCdf(0)).toBe(0.5);
    expect(chiSquareTail1(3.841458820694124)).toBeCloseTo(0.05, 10);
  });
});

describe("log-normal by moments", () => {
  test("keeps the mean and variance it was given", () => {
    const { mu, sigma } = logNormalByMoments(5, 4);
    expect(Math.exp(mu + sigma ** 2 / 2)).toBeCloseTo(5, 12);
    expect(Math.expm1(sigma ** 2) * Math.exp(2 * mu + sigma ** 2)).toBeCloseTo(4, 12);
  });

  test("without spread it is a single value", () => {
    const point = logNormalByMoments(5, 0);
    expect(logNormalInterval(point, 0.95).lower).toBeCloseTo(5, 12);
    expect([
      logNormalAbove(4.9, point),
      logNormalAbove(5.1, point),
      logNormalAbove(0, point),
    ]).toEqual([1, 0, 1]);
  });

  test("its limits leave the same on either side", () => {
    const spread = logNormalByMoments(5, 4);
    const { lower, upper } = logNormalInterval(spread, 0.9);
    expect(logNormalAbove(upper, spread)).toBeCloseTo(0.05, 9);
    expect(logNormalAbove(lower, spread)).toBeCloseTo(0.95, 9);
  });
});

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 0; i < k; i += 1) ways = (ways * (n - i)) / (i + 1);
  return ways;
}
