import fc from "fast-check";
import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";

const HOUR_MS = 3_600_000;

/** A clock whose wall and ticks are set by hand. */
function setUp(wall = 10 * HOUR_MS) {
  const now = { wall, ticks: 0 };
  const clock = new SteadyClock(
    () => now.wall,
    () => now.ticks,
  );
  const pass = (ms: number) => {
    now.wall += ms;
    now.ticks += ms;
  };
  return { now, clock, pass };
}

test("follows the wall", () => {
  const { clock, pass } = setUp(1000);
  expect(clock.stamp()).toBe(1000);
  pass(250.7);
  expect(clock.stamp()).toBe(1250);
});

test("follows the wall forward when the ticks slept", () => {
  const { now, clock } = setUp(1000);
  clock.stamp();
  now.wall += HOUR_MS;
  expect(clock.stamp()).toBe(1000 + HOUR_MS);
});

test("goes on at its own pace when the wall is set back an hour", () => {
  const { now, clock, pass } = setUp(10 * HOUR_MS);
  clock.stamp();
  now.wall -= HOUR_MS;
  pass(60_000);
  expect(clock.stamp()).toBe(10 * HOUR_MS + 60_000);
  pass(60_000);
  expect(clock.stamp()).toBe(10 * HOUR_MS + 120_000);
});

test("goes on from the last time kept, where that lies ahead of the wall", () => {
  const { clock, pass } = setUp(10 * HOUR_MS);
  expect(clock.stamp(undefined, 11 * HOUR_MS)).toBe(11 * HOUR_MS);
  pass(500);
  expect(clock.stamp(undefined, 11 * HOUR_MS)).toBe(11 * HOUR_MS + 500);
});

test("dates what was said earlier back by its age, but never before what was written", () => {
  const { now, clock, pass } = setUp(10_000);
  expect(clock.stamp(7000)).toBe(7000);
  pass(1000);
  expect(clock.stamp(10_500)).toBe(10_500);
  expect(clock.stamp(9000)).toBe(10_500);
  now.wall -= 5000;
  expect(clock.stamp(10_900)).toBe(11_000);
});

test("never runs backwards, whatever wall and speakers do", () => {
  const step = fc.record({
    wall: fc.integer({ min: -2 * HOUR_MS, max: 2 * HOUR_MS }),
    ticks: fc.integer({ min: 0, max: HOUR_MS }),
    age: fc.integer({ min: -HOUR_MS, max: HOUR_MS }),
  });
  fc.assert(
    fc.property(fc.array(step), (steps) => {
      const { now, clock } = setUp();
      const stamps = steps.map(({ wall, ticks, age }) => {
        now.wall += wall;
        now.ticks += ticks;
        return clock.stamp(now.wall - age);
      });
      expect(stamps).toEqual([...stamps].sort((a, b) => a - b));
    }),
  );
});
