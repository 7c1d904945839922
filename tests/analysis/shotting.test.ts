import { describe, expect, test } from "vitest";
import { floating, shotLoad } from "../../src/analysis/shotting/floating.ts";
import { POLE_FLOATS, SHOT } from "../../src/analysis/shotting/shot.ts";

// The table is from memory (common practice, no source): only its order and its sums are checked.
describe("shot and floats", () => {
  test("sizes run from heavy to light, and lower limits do not pass upper ones", () => {
    const order = [
      "SSG",
      "AAA",
      "AB",
      "BB",
      "1",
      "3",
      "4",
      "5",
      "6",
      "8",
      "9",
      "10",
      "11",
      "12",
      "13",
    ];
    expect(Object.keys(SHOT).toSorted()).toEqual(order.toSorted());
    for (const [place, size] of order.entries()) {
      const shot = SHOT[size];
      expect(shot?.lower).toBeLessThanOrEqual(shot?.upper ?? 0);
      const lighter = SHOT[order[place + 1] ?? ""];
      if (lighter) expect(lighter.upper).toBeLessThanOrEqual(shot?.lower ?? 0);
    }
  });

  test("loads add up between the makers", () => {
    const load = shotLoad([
      { size: "8", count: 4 },
      { size: "10", count: 2 },
    ]);
    expect(load.lower).toBeCloseTo(0.304, 12);
    expect(load.upper).toBeCloseTo(0.34, 12);
    expect(shotLoad([])).toEqual({ lower: 0, upper: 0, unknown: [] });
    expect(
      shotLoad([
        { size: "7", count: 1 },
        { size: "toString", count: 1 },
      ]).unknown,
    ).toEqual(["7", "toString"]);
  });

  test("floats, sinks or depends on the makers", () => {
    const carries = POLE_FLOATS["4x14"] ?? { lower: 0, upper: 0 };
    expect(carries).toEqual({ lower: 0.3, upper: 0.4 });
    expect(floating(carries, [{ size: "8", count: 4 }])).toBe("floats");
    expect(floating(carries, [{ size: "8", count: 4 }], 0.1)).toBe("depends");
    expect(floating(carries, [{ size: "8", count: 5 }])).toBe("depends");
    expect(floating(carries, [{ size: "8", count: 7 }])).toBe("sinks");
    expect(floating(carries, [])).toBe("floats");
  });

  test("a size no table knows leaves it open, unless the others sink it", () => {
    expect(floating({ lower: 0.3, upper: 0.4 }, [{ size: "7", count: 1 }])).toBe("unknown");
    expect(
      floating({ lower: 0.3, upper: 0.4 }, [
        { size: "7", count: 1 },
        { size: "SSG", count: 1 },
      ]),
    ).toBe("sinks");
  });
});
