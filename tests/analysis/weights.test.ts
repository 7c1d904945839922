import { describe, expect, test } from "vitest";
import {
  biasFactor,
  biasFrom,
  UNKNOWN_BIAS,
  weighedNets,
} from "../../src/analysis/weights/bias.ts";
import { type Load, loadsOf } from "../../src/analysis/weights/loads.ts";
import { netRisk, netRisks } from "../../src/analysis/weights/nets.ts";
import {
  chanceMassAbove,
  massEstimate,
  massOf,
  totalOf,
} from "../../src/analysis/weights/total.ts";
import { typicalFish } from "../../src/analysis/weights/typical.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { emptySession, randomNumbers, sessionOf } from "./fixtures/session.ts";

const fish = (weightG: number): EntryStatement => ({ kind: "fish", weightG });
const load = (net: number, spokenG: number, more: Partial<Load> = {}): Load => ({
  net,
  spokenG,
  variance: 0,
  fish: 10,
  unknown: 0,
  ...more,
});

/** Pairs of standard normal numbers (Box & Muller), the same on every run. */
function normals(seed: number): () => number {
  const random = randomNumbers(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

describe("bias", () => {
  test("none weighed leaves what was believed, and does not tell", () => {
    expect(biasFrom([])).toBe(UNKNOWN_BIAS);
    expect(biasFactor(UNKNOWN_BIAS).tells).toBe(false);
    expect(
      biasFactor(
        biasFrom([
          { session: "a", spokenG: 9000, weighedG: 10_000 },
          { session: "b", spokenG: 9000, weighedG: 10_000 },
        ]),
      ).tells,
    ).toBe(false);
  });

  const everywhere = (sessions: readonly string[], weighedG: number) =>
    sessions.map((session) => ({ session, spokenG: 10_000, weighedG }));

  test("normal-normal updating (Bayesian Data Analysis 3rd ed. §2.5) on logs, a session's mean once", () => {
    const { belief, perSession, perNet } = biasFrom(everywhere(["a", "b", "c", "d"], 11_000));
    // All sessions agree, so their spread is the prior's four over four and three more.
    expect(perSession).toBeCloseTo((4 * 0.09 ** 2) / 7, 12);
    expect(perNet).toBe(0.05 ** 2);
    const noise = perSession + perNet;
    expect(belief.variance).toBeCloseTo(1 / (1 / 0.04 + 4 / noise), 12);
    expect(belief.mean).toBeCloseTo((belief.variance * 4 * Math.log(1.1)) / noise, 12);
  });

  test("four nets of one day teach less than one net on each of four days", () => {
    const [oneDay, fourDays] = [
      biasFrom(everywhere(["a", "a", "a", "a"], 11_000)),
      biasFrom(everywhere(["a", "b", "c", "d"], 11_000)),
    ];
    expect(oneDay.belief.variance).toBeGreaterThan(2 * fourDays.belief.variance);
    expect(oneDay.perSession).toBe(UNKNOWN_BIAS.perSession);
    expect(oneDay.perNet).toBeLessThan(UNKNOWN_BIAS.perNet);
  });

  test("nets that differ within a day widen the nets' spread, days that differ the days'", () => {
    const within = biasFrom([...everywhere(["a"], 9000), ...everywhere(["a"], 13_000)]);
    expect(within.perNet).toBeGreaterThan(UNKNOWN_BIAS.perNet);
    const between = biasFrom([...everywhere(["a"], 8000), ...everywhere(["b"], 13_000)]);
    expect(between.perSession).toBeGreaterThan(UNKNOWN_BIAS.perSession);
    expect(between.perNet).toBe(UNKNOWN_BIAS.perNet);
  });

  test("limits hold a true bias at least nine times in ten (simulated)", () => {
    const normal = normals(5);
    let held = 0;
    for (let trial = 0; trial < 500; trial += 1) {
      const truth = 0.15 * normal();
      const nets = Array.from({ length: 6 }, (_, place) => ({
        session: `day ${place}`,
        spokenG: 8000,
        weighedG: 8000 * Math.exp(truth + 0.1 * normal()),
      }));
      const { lower, upper } = biasFactor(biasFrom(nets));
      if (lower <= Math.exp(truth) && Math.exp(truth) <= upper) held += 1;
    }
    expect(held / 500).toBeGreaterThan(0.9);
  });

  test("learns from nets that were spoken of in full and weighed", () => {
    const session = sessionOf(
      [
        [1, fish(500)],
        [2, fish(700)],
        [3, { kind: "net" }],
        [4, fish(900)],
        [5, { kind: "net" }],
      ],
      { weighed: { 1: 1300, 3: 400 } },
    );
    expect(weighedNets([session, emptySession])).toEqual([
      { session: "s1", spokenG: 1200, weighedG: 1300 },
    ]);
    for (const slip of [0, 130, 13_000]) {
      expect(weighedNets([sessionOf([[1, fish(1200)]], { weighed: { 1: slip } })])).toEqual([]);
    }
  });
});

describe("running total", () => {
  test("no fish weigh nothing, and certainly so", () => {
    expect(massEstimate(massOf([], UNKNOWN_BIAS))).toEqual({
      tells: true,
      value: 0,
      lower: 0,
      upper: 0,
    });
    expect(massEstimate(massOf(loadsOf(sessionOf([])), UNKNOWN_BIAS)).upper).toBe(0);
  });

  test("what was weighed has no doubt left", () => {
    const mass = massOf([load(1, 9000, { weighedG: 9400 })], UNKNOWN_BIAS);
    expect(massEstimate(mass)).toEqual({ tells: true, value: 9400, lower: 9400, upper: 9400 });
    expect([9399, 9401].map((bar) => chanceMassAbove(bar, mass))).toEqual([1, 0]);
  });

  test("of an angler of whom nothing is known, what he said is as likely too low as too high", () => {
    const mass = massOf([load(1, 9000)], UNKNOWN_BIAS);
    expect(massEstimate(mass)).toMatchObject({ tells: true, value: expect.closeTo(9000, 6) });
    expect(chanceMassAbove(9000, mass)).toBeCloseTo(0.5, 9);
  });

  test("fish of unknown weight leave the top open", () => {
    expect(massEstimate(massOf([load(1, 0, { unknown: 2 })], UNKNOWN_BIAS))).toEqual({
      tells: false,
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
    });
  });

  test("middle and limits are what drawing from the model gives (simulated)", () => {
    const normal = normals(9);
    const bias = {
      belief: { mean: 0.1, variance: 0.006 },
      perSession: 0.004,
      perNet: 0.0064,
      nets: 5,
    };
    const loads = [load(1, 8000), load(2, 15_000), load(3, 4000, { weighedG: 4321 })];
    const totals = Array.from({ length: 40_000 }, () => {
      const shared = 0.1 + 0.1 * normal();
      return (
        4321 +
        8000 * Math.exp(shared + 0.08 * normal()) +
        15_000 * Math.exp(shared + 0.08 * normal())
      );
    }).sort((one, other) => one - other);
    const total = massEstimate(massOf(loads, bias));
    expect((total.tells ? total.value : 0) / (totals[20_000] ?? 0)).toBeCloseTo(1, 2);
    expect(total.lower / (totals[1000] ?? 0)).toBeCloseTo(1, 1.7);
    expect(total.upper / (totals[39_000] ?? 0)).toBeCloseTo(1, 1.7);
  });

  test("a fish filled in widens the total", () => {
    const two = [
      [1, fish(500)],
      [2, fish(500)],
    ] as const;
    const said = totalOf(sessionOf([...two, [3, fish(500)]]), UNKNOWN_BIAS);
    const unsaid = totalOf(sessionOf([...two, [3, { kind: "fish" }]]), UNKNOWN_BIAS);
    expect(said.tells && unsaid.tells && unsaid.value / said.value).toBeCloseTo(1, 1.6);
    expect(unsaid.upper - unsaid.lower).toBeGreaterThan(said.upper - said.lower);
  });
});

describe("a typical fish", () => {
  test("mean and spread, none without fish", () => {
    expect(typicalFish([])).toBeUndefined();
    expect(typicalFish([{ count: 1, eachG: 400 }])).toEqual({
      meanG: 400,
      variance: 200 ** 2,
      fish: 1,
    });
    const many = typicalFish([
      { count: 500, eachG: 300 },
      { count: 500, eachG: 500 },
    ]);
    expect(many?.meanG).toBe(400);
    expect(Math.sqrt(many?.variance ?? 0)).toBeCloseTo(100, 0);
  });
});

describe("nets against their limit", () => {
  const typical = { meanG: 800, variance: 300 ** 2, fish: 10 };
  const standing = (spokenG: number, risk = 0.05) =>
    netRisk(load(1, spokenG), UNKNOWN_BIAS, typical, 27_215, risk);

  test("the chance grows with what is in it, and the warning comes first", () => {
    const [low, mid, high] = [standing(10_000), standing(18_000), standing(35_000)];
    expect(low.standing).toBe("fine");
    expect(high.standing).toBe("over");
    expect(low.chanceOver).toBeLessThan(mid.chanceOver);
    expect(mid.chanceOver).toBeLessThan(high.chanceOver);
    expect(mid.chanceAfterNext).toBeGreaterThan(mid.chanceOver);
    const between = standing(20_000, mid.chanceAfterNext * 1.2);
    expect(["one-more", "over"]).toContain(between.standing);
  });

  test("at the limit by word, with no bias known, it is a toss-up; risk is the angler's to set", () => {
    expect(standing(27_215).chanceOver).toBeCloseTo(0.5, 1);
    expect(standing(24_000, 0.05).standing).toBe("over");
    expect(standing(24_000, 0.9).standing).toBe("fine");
  });

  test("one fish away", () => {
    const near = netRisk(
      load(1, 26_000, { weighedG: 26_000 }),
      UNKNOWN_BIAS,
      typical,
      26_001,
      0.05,
    );
    expect(near).toMatchObject({ chanceOver: 0, standing: "fine" });
    const exact = { belief: { mean: 0, variance: 1e-6 }, perSession: 1e-6, perNet: 1e-6, nets: 40 };
    expect(netRisk(load(1, 26_000), exact, typical, 26_400, 0.05).standing).toBe("one-more");
  });

  test("in a session: every net against the plan's limit, none without one", () => {
    const lines = [
      [1, fish(900)],
      [2, { kind: "net" }],
      [3, fish(800)],
      [4, { kind: "fish" }],
    ] as const;
    const risks = netRisks(sessionOf(lines, { plan: { netLimitG: 1000 } }), UNKNOWN_BIAS, 0.05);
    expect(risks.map(({ net, standing }) => [net, standing])).toEqual([
      [1, "over"],
      [2, "over"],
    ]);
    expect(netRisks(sessionOf(lines), UNKNOWN_BIAS, 0.05)).toEqual([]);
    expect(netRisks(emptySession, UNKNOWN_BIAS, 0.05)).toEqual([]);
    const unweighed = sessionOf([[1, { kind: "fish" }]], { plan: { netLimitG: 1000 } });
    expect(netRisks(unweighed, UNKNOWN_BIAS, 0.05)[0]).toMatchObject({
      standing: "fine",
      mass: { tells: false },
    });
  });
});
