import fc from "fast-check";
import { expect, test } from "vitest";
import { foldSession } from "../../src/log/fold.ts";
import { clockHours, hoursOf, layOut, levelsUpTo } from "../../src/screens/summary/timeline-of.ts";
import { entry, MINUTE_MS, SESSION, START } from "../log/session-script.ts";

const at = (minutes: number) => START + minutes * MINUTE_MS;
const session = foldSession(SESSION, [
  entry(0, { kind: "session", act: "start" }),
  entry(10, { kind: "fish", weightG: 500, count: 2 }),
  entry(20, { kind: "fish" }),
  entry(30, { kind: "loss", cause: "off" }),
  entry(40, { kind: "session", act: "pause" }),
  entry(50, { kind: "session", act: "resume" }),
  entry(70, { kind: "fish", weightG: 700 }),
]);

test("the weight climbs with each fish that was weighed", () => {
  const laid = layOut(session, at(90));
  expect(laid).toMatchObject({ from: at(0), to: at(90) });
  expect(laid?.climb).toEqual([
    { at: at(10), value: 1000 },
    { at: at(70), value: 1700 },
  ]);
  expect(laid?.breaks).toEqual([{ from: at(40), to: at(50) }]);
  expect(laid?.rows).toEqual([
    { name: "Fish", at: [at(10), at(20), at(70)] },
    { name: "Lost", at: [at(30)] },
  ]);
});

test("before the start there is nothing to lay out", () => {
  expect(layOut(foldSession(SESSION, []), at(0))).toBeUndefined();
});

test("hours add up to the session", () => {
  const laid = layOut(session, at(90));
  if (!laid) throw new Error("Nothing was laid out.");
  expect(hoursOf(session, laid)).toEqual([
    { from: at(0), fish: 3, grams: 1000, lost: 1 },
    { from: at(60), fish: 1, grams: 700, lost: 0 },
  ]);
  expect(hoursOf(session, { ...laid, to: at(60) + 1000 })).toHaveLength(1);
});

test("clock hours lie within the session, not more than about six", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 * 60 }), (minutes) => {
      const laid = { from: at(0), to: at(minutes), climb: [], rows: [], breaks: [] };
      const hours = clockHours(laid);
      expect(hours.length).toBeLessThanOrEqual(7);
      for (const hour of hours) {
        expect(hour).toBeGreaterThan(laid.from);
        expect(hour).toBeLessThanOrEqual(laid.to);
        expect(new Date(hour).getMinutes()).toBe(0);
      }
    }),
  );
});

test.each([
  [0, [0, 0.5, 1]],
  [2.9, [0, 1, 2, 3]],
  [12, [0, 5, 10, 15]],
  [97.5, [0, 50, 100]],
])("levels up to %d are %j", (top, levels) => {
  expect(levelsUpTo(top * 10, 10)).toEqual(levels.map((level) => level * 10));
});
