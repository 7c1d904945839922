import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exposuresBy, FACTORS } from "../../src/analysis/effort/exposure.ts";
import { spellsOf } from "../../src/analysis/effort/spells.ts";
import { clip, fishedStretches, lengthOf } from "../../src/analysis/effort/stretches.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, MINUTE, sessionOf } from "./fixtures/session.ts";

const deeper: EntryStatement = { kind: "change", depthMm: 600 };
const shallow: EntryStatement = { kind: "change", depthMm: 400, rig: "1" };
const fish: EntryStatement = { kind: "fish", weightG: 500 };

describe("fished stretches", () => {
  test("pauses are out, an open pause lasts", () => {
    const session = sessionOf([], { pauses: [[10, 20], [50]] });
    expect(fishedStretches(session, at(60))).toEqual([
      { from: at(0), to: at(10) },
      { from: at(20), to: at(50) },
    ]);
  });

  test("the end holds against a later now, and against a pause past it", () => {
    const session = sessionOf([], { pauses: [[50, 70]], endsAfter: 60 });
    expect(fishedStretches(session, at(500))).toEqual([{ from: at(0), to: at(50) }]);
  });

  test("a clock set back an hour leaves what was fished up to the last entry", () => {
    const session = sessionOf([[90, fish]], { pauses: [[10, 20]] });
    expect(lengthOf(fishedStretches(session, at(31)))).toBe(80 * MINUTE);
    expect(lengthOf(fishedStretches(session, at(100)))).toBe(90 * MINUTE);
  });

  test("nothing before the start", () => {
    expect(fishedStretches(emptySession, at(9))).toEqual([]);
    expect(fishedStretches(sessionOf([]), at(-5))).toEqual([]);
    expect(spellsOf(emptySession, at(9))).toEqual([]);
    expect(exposuresBy("depth", emptySession, at(9))).toEqual([]);
  });

  test("clip keeps what lies between", () => {
    const clipped = clip(
      [
        { from: 0, to: 10 },
        { from: 20, to: 30 },
      ],
      5,
      25,
    );
    expect(clipped).toEqual([
      { from: 5, to: 10 },
      { from: 20, to: 25 },
    ]);
    expect(lengthOf(clipped)).toBe(10);
  });
});

describe("spells", () => {
  test("a spell is one unchanged set-up, its pauses out", () => {
    const session = sessionOf(
      [
        [10, shallow],
        [20, fish],
        [40, deeper],
        [45, fish],
        [50, shallow],
        [70, fish],
      ],
      { pauses: [[25, 30]], endsAfter: 65 },
    );
    const spells = spellsOf(session, at(65));
    expect(spells.map(({ setUp, fishedMs }) => [setUp.depthMm, fishedMs / MINUTE])).toEqual([
      [undefined, 10],
      [400, 25],
      [600, 10],
      [400, 15],
    ]);
  });

  test("further cuts end a spell without a change", () => {
    const spells = spellsOf(sessionOf([[0, shallow]]), at(60), [at(20), at(20), at(90)]);
    expect(
      spells.filter((spell) => spell.fishedMs > 0).map(({ fishedMs }) => fishedMs / MINUTE),
    ).toEqual([20, 40]);
  });
});

describe("exposure", () => {
  test("time, drops, fish and losses by depth band", () => {
    const session = sessionOf([
      [0, shallow],
      [1, { kind: "drop" }],
      [2, fish],
      [3, { kind: "fish", count: 3 }],
      [30, { kind: "change", depthMm: 381 }],
      [35, { kind: "loss", cause: "off" }],
      [45, deeper],
      [50, fish],
    ]);
    const [unsaid, ...levels] = exposuresBy("depth", session, at(60));
    expect(unsaid?.hours).toBe(0);
    expect(
      levels.map(({ level, hours, drops, fish, lost }) => [level, hours, drops, fish, lost]),
    ).toEqual([
      [400, 0.75, 1, 4, 1],
      [600, 0.25, 0, 1, 0],
    ]);
  });

  test("a session that a wrong clock began in 1970 has no half million hours", () => {
    const session = sessionOf([[1, fish]]);
    expect(exposuresBy("hour", { ...session, startedAt: 0 }, at(150)).length).toBeLessThan(1100);
  });

  test("hours are the session's own, counted from 1", () => {
    const session = sessionOf(
      [
        [5, fish],
        [65, fish],
        [66, fish],
        [121, fish],
      ],
      { pauses: [[30, 45]] },
    );
    expect(
      exposuresBy("hour", session, at(150)).map(({ level, hours, fish }) => [level, hours, fish]),
    ).toEqual([
      [1, 0.75, 1],
      [2, 1, 2],
      [3, 0.5, 1],
    ]);
  });

  const statement = fc.oneof(
    fc.record({ kind: fc.constant("fish" as const), count: fc.integer({ min: 1, max: 4 }) }),
    fc.record({
      kind: fc.constant("change" as const),
      depthMm: fc.integer({ min: 200, max: 2000 }),
    }),
    fc.record({ kind: fc.constant("change" as const), bait: fc.constantFrom("pellet", "corn") }),
    fc.constant({ kind: "drop" as const }),
  );
  const lines = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 300 }), statement), { maxLength: 40 })
    .map((drawn) => drawn.sort(([a], [b]) => a - b));

  test.each(FACTORS)("nothing is lost or counted twice by %s", (factor) => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 0, max: 300 }), (drawn, pause) => {
        const session = sessionOf(drawn, { pauses: [[pause, pause + 20]] });
        const levels = exposuresBy(factor, session, at(300));
        const hours = levels.reduce((total, level) => total + level.hours, 0);
        const count = levels.reduce((total, level) => total + level.fish, 0);
        expect(hours).toBeCloseTo(lengthOf(fishedStretches(session, at(300))) / (60 * MINUTE), 9);
        expect(count).toBe(session.count);
      }),
    );
  });
});
