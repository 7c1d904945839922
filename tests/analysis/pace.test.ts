import { describe, expect, test } from "vitest";
import { futureLoad, paceOf } from "../../src/analysis/pace.ts";
import type { Bias } from "../../src/analysis/weights/bias.ts";
import { UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, randomNumbers, sessionOf } from "./fixtures/session.ts";

const fish = (weightG: number): EntryStatement => ({ kind: "fish", weightG });
const everyTen = (count: number) =>
  Array.from(
    { length: count },
    (_, place) => [10 * (place + 1), fish(place % 2 ? 400 : 600)] as const,
  );
const plan = { endsAt: at(300), targetG: 10_000 };

describe("pace", () => {
  test("twelve fish in two hours make about thirty in five", () => {
    const pace = paceOf(sessionOf(everyTen(12), { plan }), at(120), UNKNOWN_BIAS);
    if (!pace.final.tells) throw new Error("too few");
    expect(pace.hoursLeft).toBe(3);
    expect(pace.final.value / 15_000).toBeCloseTo(1, 0.9);
    expect(pace.final.lower).toBeLessThan(12_000);
    expect(pace.final.upper).toBeGreaterThan(18_000);
  });

  test("what a target needs per hour from now, and the chance of it", () => {
    const { now, needed } = paceOf(sessionOf(everyTen(12), { plan }), at(120), UNKNOWN_BIAS);
    const left = 10_000 - (now.tells ? now.value : 0);
    expect(needed?.gramsPerHour).toBeCloseTo(left / 3, 6);
    expect(needed?.fishPerHour).toBeCloseTo(left / 3 / 500, 6);
    expect(needed?.chance).toBeGreaterThan(0.8);
    expect(needed?.chance).toBeLessThan(1);
  });

  test("time up: the bag is what it is, and a miss cannot be made up", () => {
    const pace = paceOf(sessionOf(everyTen(12), { plan }), at(300), UNKNOWN_BIAS);
    expect(pace.final).toEqual(pace.now);
    expect(pace.needed?.gramsPerHour).toBe(Number.POSITIVE_INFINITY);
    const reached = paceOf(
      sessionOf(everyTen(12), { plan: { ...plan, targetG: 100 } }),
      at(300),
      UNKNOWN_BIAS,
    );
    expect(reached.needed?.gramsPerHour).toBe(0);
    const ended = paceOf(sessionOf(everyTen(12), { plan, endsAfter: 130 }), at(140), UNKNOWN_BIAS);
    expect(ended.hoursLeft).toBe(0);
  });

  test("two fish, no fish, no end or no start are too few to tell, and never NaN", () => {
    const cases = [
      paceOf(sessionOf(everyTen(2), { plan }), at(120), UNKNOWN_BIAS),
      paceOf(sessionOf([], { plan }), at(120), UNKNOWN_BIAS),
      paceOf(sessionOf(everyTen(12)), at(120), UNKNOWN_BIAS),
      paceOf({ ...emptySession, plan }, at(0), UNKNOWN_BIAS),
      paceOf(sessionOf([[0, { kind: "fish", count: 9 }]], { plan }), at(60), UNKNOWN_BIAS),
    ];
    for (const { final, needed } of cases) {
      expect(final).toMatchObject({ tells: false, upper: Number.POSITIVE_INFINITY });
      expect([final.lower, needed?.gramsPerHour, needed?.fishPerHour].some(Number.isNaN)).toBe(
        false,
      );
      expect(needed?.chance).toBeUndefined();
    }
  });

  test("the final bag falls within its limits as often as they say (simulated)", () => {
    const random = randomNumbers(21);
    const exact: Bias = {
      belief: { mean: 0, variance: 1e-9 },
      perSession: 1e-9,
      perNet: 1e-9,
      nets: 50,
    };
    const weight = () => (random() < 0.3 ? 1200 : 300 + 200 * random());
    let [held, told] = [0, 0];
    for (let trial = 0; trial < 400; trial += 1) {
      // The rate itself varies from day to day.
      const meanGap = 5 + 15 * random();
      const caught: [number, EntryStatement][] = [];
      let total = 0;
      for (let minute = 0; ; ) {
        minute -= meanGap * Math.log(1 - random());
        if (minute > 300) break;
        const grams = weight();
        total += grams;
        if (minute <= 120) caught.push([minute, fish(grams)]);
      }
      const { final } = paceOf(sessionOf(caught, { plan }), at(120), exact);
      if (!final.tells) continue;
      told += 1;
      if (final.lower <= total && total <= final.upper) held += 1;
    }
    expect(told).toBeGreaterThan(300);
    expect(held / told).toBeGreaterThan(0.91);
    expect(held / told).toBeLessThan(0.99);
  });

  test("moments of what is to come: by hand", () => {
    const { spokenG, variance } = futureLoad(11.5, 2, 1, {
      meanG: 500,
      variance: 100 ** 2,
      fish: 12,
    });
    // Gamma(12, 2): mean count 6, variance 6 × (1 + 1/2).
    expect(spokenG).toBeCloseTo(3000, 9);
    expect(variance).toBeCloseTo(6 * 100 ** 2 + 9 * 500 ** 2 + ((36 + 9) * 100 ** 2) / 12, 6);
  });
});
