import { describe, expect, test } from "vitest";
import { fillWeights } from "../../src/analysis/weights/fill.ts";
import { sessionOf } from "./fixtures/session.ts";

const filled = (lines: Parameters<typeof sessionOf>[0]) => fillWeights(sessionOf(lines).entries);

describe("a weight for every fish", () => {
  test("said stands, a length is worked out, the rest is like its kind", () => {
    const { fish, unknown } = filled([
      [1, { kind: "fish", species: "carp", weightG: 900 }],
      [2, { kind: "fish", species: "carp", lengthMm: 400 }],
      [3, { kind: "fish", species: "carp", count: 2 }],
      [4, { kind: "fish", species: "roach", weightG: 60, count: 3 }],
      [5, { kind: "fish", species: "roach" }],
      [6, { kind: "fish" }],
    ]);
    expect(unknown).toBe(0);
    expect(fish.map(({ how }) => how)).toEqual(["said", "length", "mean", "said", "mean", "mean"]);
    expect(fish[2]).toMatchObject({ count: 2, eachG: 900 });
    expect(fish[4]?.eachG).toBe(60);
    // Of no known kind: the mean of all that were said, one of 900 g and three of 60 g.
    expect(fish[5]?.eachG).toBe(270);
    expect(fish[0]?.variance).toBe(0);
    for (const place of [1, 2, 4, 5]) expect(fish[place]?.variance).toBeGreaterThan(0);
  });

  test("more weighed fish leave less doubt about one that was not", () => {
    const with2 = filled([
      [1, { kind: "fish", weightG: 500, count: 2 }],
      [2, { kind: "fish" }],
    ]);
    const with9 = filled([
      [1, { kind: "fish", weightG: 500, count: 9 }],
      [2, { kind: "fish" }],
    ]);
    expect(with9.fish[1]?.variance).toBeLessThan(with2.fish[1]?.variance ?? 0);
  });

  test("with none weighed nothing is made up", () => {
    expect(
      filled([
        [1, { kind: "fish", count: 2 }],
        [2, { kind: "fish", species: "goldfish", lengthMm: 200 }],
      ]),
    ).toEqual({ fish: [], unknown: 3 });
    expect(fillWeights([])).toEqual({ fish: [], unknown: 0 });
  });
});
