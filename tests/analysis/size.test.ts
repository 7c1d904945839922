import { describe, expect, test } from "vitest";
import { observed } from "../../src/analysis/distributions/normal-belief.ts";
import { doubtfulFish } from "../../src/analysis/size/doubts.ts";
import { fitRelation } from "../../src/analysis/size/fit.ts";
import {
  condition,
  conditionAt,
  fromStandardWeight,
  lengthAt,
  type Relation,
  weightAt,
} from "../../src/analysis/size/relation.ts";
import { RELATIONS, relationOf } from "../../src/analysis/size/species.ts";
import {
  conditionAfter,
  isDoubtful,
  UNKNOWN_CONDITION,
  workOutWeight,
} from "../../src/analysis/size/worked-out.ts";
import { bream, perch, type Row, roach } from "./fixtures/laengelmaevesi.ts";
import { sessionOf } from "./fixtures/session.ts";

const measured = (rows: readonly Row[]) =>
  rows.map(([weightG, , , tl]) => ({ weightG, lengthMm: tl * 10 }));
const known = (species: string): Relation => relationOf(species) as Relation;
const standard = (intercept: number, slope: number): Relation => ({
  ...fromStandardWeight(intercept, slope),
  lengthType: "TL",
  spread: 0.2,
});

describe("relations", () => {
  test("carp Ws at 300 and 500 mm (Bister 2000, as listed in the R package FSA; calc)", () => {
    expect(weightAt(300, standard(-4.639, 2.92))).toBeCloseTo(392.8204, 3);
    expect(weightAt(500, standard(-4.639, 2.92))).toBeCloseTo(1745.7917, 3);
    expect(weightAt(500, known("carp"))).toBeCloseTo(1745.7917, 3);
  });

  test("perch Ws (linear form) at 300 mm (Giannetto 2012; calc)", () => {
    expect(weightAt(300, standard(-5.3493, 3.2152))).toBeCloseTo(412.2306, 3);
  });

  test("tench K 1.513 (Balık 2009)", () => {
    // The mean of the fish themselves, so only near the curve's.
    expect(conditionAt(250, known("tench")) / 1.513).toBeCloseTo(1, 2);
  });

  test("Fulton's K = 100 W / L³ (g, cm), and mean K = 100·a·L^(b−3) (Froese 2006)", () => {
    expect(condition(500, 300)).toBeCloseTo((100 * 500) / 30 ** 3, 12);
    const { a, b } = known("bream");
    expect(conditionAt(300, known("bream"))).toBeCloseTo(100 * a * 30 ** (b - 3), 12);
  });

  test("length undoes weight for every species", () => {
    for (const relation of Object.values(RELATIONS)) {
      expect(lengthAt(weightAt(333, relation), relation)).toBeCloseTo(333, 9);
    }
  });

  test("bream W = 0.0106·SL^3.2098 (Khristenko & Kotovska 2017) agrees with the catch within a third", () => {
    const other: Relation = { a: 0.0106, b: 3.2098, lengthType: "SL", spread: 0.2 };
    for (const [weight, sl] of bream)
      expect(Math.abs(Math.log(weightAt(sl * 10, other) / weight))).toBeLessThan(0.4);
  });

  test("memory: crucian, ide, barbel and rudd give plausible fish at 30 cm", () => {
    for (const species of ["crucian", "ide", "barbel", "rudd"]) {
      const weight = weightAt(300, known(species));
      expect(weight).toBeGreaterThan(200);
      expect(weight).toBeLessThan(600);
    }
  });

  test("a species without a source has none, whatever its name", () => {
    for (const name of ["goldfish", "constructor", undefined])
      expect(relationOf(name)).toBeUndefined();
  });
});

describe("least squares of ln W on ln L3 (Längelmävesi, Debian package r-cran-rrcov; calc)", () => {
  test.each([
    ["bream", bream, 34, 0.0071422005, 3.1092756, 0.0917],
    ["roach", roach, 19, 0.0065702003, 3.1081514, 0.1089],
    ["perch", perch, 56, 0.0062271263, 3.1626878, 0.1157],
  ] as const)("%s", (_, rows, n, a, b, spread) => {
    expect(rows).toHaveLength(n);
    const fit = fitRelation(measured(rows), "TL");
    if (!fit.tells) throw new Error("too few");
    expect(fit.a).toBeCloseTo(a, 9);
    expect(fit.b).toBeCloseTo(b, 6);
    expect(fit.spread).toBeCloseTo(spread, 4);
  });

  test("too few fish, or all of one length, fit nothing", () => {
    expect(fitRelation([], "TL")).toEqual({ tells: false });
    expect(fitRelation(measured(bream.slice(0, 2)), "TL")).toEqual({ tells: false });
    expect(fitRelation(Array(9).fill({ weightG: 500, lengthMm: 300 }), "TL")).toEqual({
      tells: false,
    });
  });
});

describe("worked out", () => {
  test("normal-normal updating (Bayesian Data Analysis 3rd ed. §2.5): precisions add", () => {
    const prior = { mean: 1, variance: 4 };
    expect(observed(prior, [], 2)).toEqual(prior);
    const belief = observed(prior, [3, 5], 2);
    expect(belief.variance).toBeCloseTo(0.8, 12);
    expect(belief.mean).toBeCloseTo(0.8 * (1 / 4 + 8 / 2), 12);
  });

  test("about 95 in 100 of the catch lie in the limits", () => {
    const rows = [...bream];
    const shift = conditionAfter(measured(rows), known("bream"));
    const held = rows.filter(([weight, , , tl]) => {
      const { lower, upper } = workOutWeight(tl * 10, known("bream"), shift);
      return lower <= weight && weight <= upper;
    });
    expect(held.length / rows.length).toBeGreaterThanOrEqual(0.9);
    expect(shift.mean).toBeCloseTo(0, 2);
  });

  test("fat fish at this water move what is worked out, and narrow it", () => {
    const fat = Array.from({ length: 6 }, () => ({
      lengthMm: 300,
      weightG: 1.2 * weightAt(300, known("carp")),
    }));
    const before = workOutWeight(400, known("carp"));
    const after = workOutWeight(400, known("carp"), conditionAfter(fat, known("carp")));
    expect(after.weightG).toBeGreaterThan(before.weightG);
    expect(after.upper / after.lower).toBeLessThan(before.upper / before.lower);
    expect(conditionAfter([], known("carp"))).toEqual(UNKNOWN_CONDITION);
  });

  test("a pair that cannot be one fish is doubted, an odd one is not", () => {
    expect(isDoubtful({ weightG: 1000, lengthMm: 400 }, known("carp"))).toBe(false);
    expect(isDoubtful({ weightG: 1500, lengthMm: 400 }, known("carp"))).toBe(false);
    expect(isDoubtful({ weightG: 9000, lengthMm: 400 }, known("carp"))).toBe(true);
    expect(isDoubtful({ weightG: 100, lengthMm: 400 }, known("carp"))).toBe(true);
    for (const fish of measured(perch)) expect(isDoubtful(fish, known("perch"))).toBe(false);
  });

  test("in a session: only fish that state both, of a species with a relation", () => {
    const session = sessionOf([
      [1, { kind: "fish", species: "carp", weightG: 9000, lengthMm: 400 }],
      [2, { kind: "fish", species: "carp", weightG: 1000, lengthMm: 400 }],
      [3, { kind: "fish", species: "carp", weightG: 9000 }],
      [4, { kind: "fish", species: "eel", weightG: 9000, lengthMm: 400 }],
      [5, { kind: "drop" }],
    ]);
    expect(doubtfulFish(session.entries).map(({ fishNumber }) => fishNumber)).toEqual([1]);
  });
});
