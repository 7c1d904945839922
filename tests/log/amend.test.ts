import { describe, expect, test } from "vitest";
import { applyAmend, canTake } from "../../src/log/amend.ts";

describe("applyAmend", () => {
  test("puts fields in and leaves the others", () => {
    const fish = { kind: "fish", species: "carp", weightG: 900, unit: { weight: "g" } } as const;
    expect(applyAmend(fish, { weightG: 1000, unit: { weight: "kg" } })).toEqual({
      kind: "fish",
      species: "carp",
      weightG: 1000,
      unit: { weight: "kg" },
    });
    expect(fish.weightG).toBe(900);
  });

  test("keeps the unit of what was not said again", () => {
    const fish = { kind: "fish", weightG: 900, lengthMm: 400, unit: { weight: "lb" } } as const;
    expect(applyAmend(fish, { lengthMm: 450, unit: { length: "cm" } })).toHaveProperty("unit", {
      weight: "lb",
      length: "cm",
    });
  });

  test("leaves alone what the kind does not have", () => {
    const fish = { kind: "fish", species: "carp" } as const;
    expect(applyAmend(fish, { depthMm: 500, cause: "off", number: 3 })).toEqual(fish);
    expect(applyAmend({ kind: "drop" }, { species: "carp" })).toEqual({ kind: "drop" });
  });

  test("takes fields out, but none the kind must have", () => {
    const loss = { kind: "loss", cause: "off", species: "carp" } as const;
    expect(applyAmend(loss, {}, ["species", "cause", "kind", "nonsense"])).toEqual({
      kind: "loss",
      cause: "off",
    });
  });

  test("a weight said again is about no longer, unless it is said again", () => {
    const fish = { kind: "fish", weightG: 900, approx: true } as const;
    expect(applyAmend(fish, { weightG: 1000 })).toEqual({ kind: "fish", weightG: 1000 });
    expect(applyAmend(fish, { species: "carp" })).toHaveProperty("approx", true);
    expect(applyAmend(fish, { weightG: 1000, approx: true })).toHaveProperty("approx", true);
  });

  test.each([
    [{ depthMm: 500 }, { depthMm: 600 }],
    [{ distanceMm: 500 }, { distanceMm: 600 }],
    [{ lashMm: 500 }, { lashMm: 600 }],
    [{ depthByMm: 100 }, { depthByMm: 600 }],
    [{ depthByMm: -100 }, { depthByMm: -600 }],
    [{ distanceByMm: -100 }, { distanceByMm: -600 }],
    [{ lashByMm: 50 }, { lashByMm: 600 }],
    [
      { rig: "2", depthMm: 500 },
      { rig: "2", depthMm: 600 },
    ],
  ])("a bare length goes to the one length a change has: %o", (before, after) => {
    expect(applyAmend({ kind: "change", ...before }, { lengthMm: 600 })).toEqual({
      kind: "change",
      ...after,
    });
  });

  test("a bare length stays out of a change with none or two", () => {
    for (const change of [{ rig: "2" }, { depthMm: 500, distanceMm: 9000 }]) {
      const statement = { kind: "change", ...change } as const;
      expect(applyAmend(statement, { lengthMm: 600 })).toEqual(statement);
    }
  });

  test("a depth takes the place of a step in depth, and the other way round", () => {
    expect(applyAmend({ kind: "change", depthByMm: 100 }, { depthMm: 600 })).toEqual({
      kind: "change",
      depthMm: 600,
    });
    expect(applyAmend({ kind: "change", depthMm: 600 }, { depthByMm: -50 })).toEqual({
      kind: "change",
      depthByMm: -50,
    });
  });

  test("another bait takes the note of the first one away", () => {
    const change = { kind: "change", bait: "pellet", baitNote: "red six mil" } as const;
    expect(applyAmend(change, { bait: "corn" })).toEqual({ kind: "change", bait: "corn" });
    expect(applyAmend(change, { bait: "wafter", baitNote: "pink" })).toEqual({
      kind: "change",
      bait: "wafter",
      baitNote: "pink",
    });
  });

  test("a bare weight goes to what was fed", () => {
    expect(applyAmend({ kind: "feed", amountG: 40, bait: "pellet" }, { weightG: 50 })).toEqual({
      kind: "feed",
      amountG: 50,
      bait: "pellet",
    });
  });
});

describe("canTake", () => {
  test.each([
    [{ kind: "fish" }, { weightG: 900 }, true],
    [{ kind: "fish" }, { depthMm: 900 }, false],
    [{ kind: "fish" }, { weightG: 900, depthMm: 500 }, false],
    [{ kind: "fish" }, { unit: { weight: "lb" } }, false],
    [{ kind: "loss", cause: "off" }, { cause: "snapped" }, true],
    [{ kind: "change", depthMm: 500 }, { lengthMm: 600 }, true],
    [{ kind: "change", rig: "2" }, { lengthMm: 600 }, false],
    [{ kind: "change", rig: "2" }, { bait: "corn" }, true],
    [{ kind: "feed" }, { bait: "corn" }, false],
    [{ kind: "feed", bait: "hemp" }, { bait: "corn" }, true],
    [{ kind: "feed", amountG: 40 }, { weightG: 50 }, true],
    [{ kind: "net" }, { number: 2 }, true],
  ] as const)("%o and %o: %s", (statement, set, expected) => {
    expect(canTake(statement, set)).toBe(expected);
  });
});
