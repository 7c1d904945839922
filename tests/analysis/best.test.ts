import { describe, expect, test } from "vitest";
import { bestIn, MOST_RANKED } from "../../src/analysis/best.ts";
import { currentRate } from "../../src/analysis/rate.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, sessionOf } from "./fixtures/session.ts";

const fish: EntryStatement = { kind: "fish", weightG: 500 };
const depth = (depthMm: number): EntryStatement => ({ kind: "change", depthMm });
type Line = readonly [number, EntryStatement];
/** So many fish, evenly, from one minute to another. */
const caught = (count: number, from: number, to: number): Line[] =>
  Array.from(
    { length: count },
    (_, place): Line => [from + ((place + 0.5) * (to - from)) / count, fish],
  );
const atDepths = (...counts: number[]) =>
  sessionOf(
    counts.flatMap((count, place): Line[] => [
      [60 * place, depth(400 + 200 * place)],
      ...caught(count, 60 * place, 60 * place + 60),
    ]),
  );

describe("the best of a session", () => {
  test("a clear leader, with limits and its chance", () => {
    const { verdict, ranked } = bestIn("depth", atDepths(3, 15, 4), at(180));
    expect(verdict).toBe("clear");
    expect(ranked.map(({ level }) => level)).toEqual([600, 800, 400]);
    expect(ranked[0]).toMatchObject({
      fish: 15,
      hours: 1,
      fishPerHour: { tells: true, value: 15 },
    });
    expect(ranked[0]?.chanceBest).toBeGreaterThan(0.95);
    expect(ranked.reduce((all, { chanceBest }) => all + chanceBest, 0)).toBeCloseTo(1, 9);
  });

  test("of more levels than anybody tries, those fished longest are ranked", () => {
    const lines = Array.from({ length: 2 * MOST_RANKED }, (_, place): Line[] => [
      [place * place, { kind: "change", rig: `r${place}` }],
      ...caught(2, place * place, place * place + 1),
    ]);
    const { ranked } = bestIn("rig", sessionOf(lines.flat()), at(4 * MOST_RANKED ** 2));
    expect(ranked).toHaveLength(MOST_RANKED);
    expect(ranked.map(({ level }) => level)).toContain(`r${2 * MOST_RANKED - 1}`);
    expect(ranked.map(({ level }) => level)).not.toContain("r0");
  });

  test("two alike are close", () => {
    const { verdict, ranked } = bestIn("depth", atDepths(10, 11), at(120));
    expect(verdict).toBe("close");
    expect(ranked[0]?.chanceBest).toBeLessThan(0.7);
  });

  test("two fish are too few to tell, both on one depth too", () => {
    expect(bestIn("depth", atDepths(2, 0), at(120)).verdict).toBe("too-few");
    expect(bestIn("depth", atDepths(0, 0), at(120)).verdict).toBe("too-few");
    expect(bestIn("depth", emptySession, at(120))).toEqual({ verdict: "too-few", ranked: [] });
    expect(bestIn("depth", atDepths(2, 0), at(120)).ranked[0]?.fishPerHour.tells).toBe(false);
  });

  test("a lucky few minutes name no leader", () => {
    const session = sessionOf([
      [0, depth(400)],
      ...caught(10, 0, 60),
      [60, depth(900)],
      [61, fish],
      [62, fish],
    ]);
    const { verdict, ranked } = bestIn("depth", session, at(63));
    expect(ranked[0]?.level).toBe(900);
    expect(verdict).not.toBe("clear");
  });

  test("a depth hardly tried is not written off", () => {
    const session = sessionOf([[0, depth(400)], ...caught(10, 0, 60), [60, depth(900)]]);
    const untried = bestIn("depth", session, at(61)).ranked.find(({ level }) => level === 900);
    expect(untried?.chanceBest).toBeGreaterThan(0.2);
  });

  test("one level has nothing to be held against; unsaid set-ups are left out", () => {
    expect(bestIn("depth", atDepths(12), at(60)).verdict).toBe("alone");
    expect(bestIn("rig", atDepths(12, 3), at(120)).verdict).toBe("too-few");
    const unsaid = sessionOf([...caught(9, 0, 30), [30, depth(400)], ...caught(6, 30, 60)]);
    expect(bestIn("depth", unsaid, at(60)).ranked.map(({ level }) => level)).toEqual([400]);
  });

  test("fish logged before any time was fished tell nothing", () => {
    expect(
      bestIn(
        "depth",
        sessionOf([
          [0, depth(400)],
          [0, { kind: "fish", count: 9 }],
        ]),
        at(0),
      ).verdict,
    ).toBe("too-few");
  });
});

describe("the rate now", () => {
  test("quiet after a good start, and the other way round", () => {
    const slow = currentRate(sessionOf([...caught(20, 0, 60)]), at(90));
    expect(slow.verdict).toBe("slower");
    expect(slow.recent).toMatchObject({ tells: false, lower: 0 });
    expect(slow.earlier).toMatchObject({ tells: true, value: 20 });
    const fast = currentRate(sessionOf([...caught(3, 0, 60), ...caught(12, 60, 90)]), at(90));
    expect(fast.verdict).toBe("faster");
    expect(fast.recent).toMatchObject({ tells: true, value: 24 });
    expect(fast.session).toMatchObject({ tells: true, value: 10 });
  });

  test("an even pace is alike", () => {
    const { verdict, chanceFaster } = currentRate(sessionOf(caught(18, 0, 90)), at(90));
    expect(verdict).toBe("alike");
    expect(chanceFaster).toBeGreaterThan(0.2);
    expect(chanceFaster).toBeLessThan(0.8);
  });

  test("the window is fished time: a pause does not empty it", () => {
    const session = sessionOf([...caught(6, 0, 60), ...caught(6, 60, 90)], { pauses: [[90, 150]] });
    expect(currentRate(session, at(150))).toEqual(currentRate(session, at(90)));
  });

  test("two fish, a short session or none at all are too few to tell", () => {
    for (const session of [sessionOf(caught(2, 0, 60)), emptySession, sessionOf([])]) {
      expect(currentRate(session, at(90))).toMatchObject({ verdict: "too-few", chanceFaster: 0.5 });
    }
    expect(currentRate(sessionOf(caught(9, 0, 20)), at(20))).toMatchObject({
      verdict: "too-few",
      earlier: { tells: false },
    });
  });
});
