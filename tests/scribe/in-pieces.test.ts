import { expect, test } from "vitest";
import { inPieces } from "../../src/scribe/in-pieces.ts";

test("a long work is done whole, and others get their turn in between", async () => {
  let [now, steps] = [0, 0];
  const turns: number[] = [];
  const other = setInterval(() => turns.push(steps));
  await inPieces(
    () => {
      now += 1;
      steps += 1;
      return steps < 100;
    },
    () => now,
  );
  clearInterval(other);
  expect(steps).toBe(100);
  expect(turns.length).toBeGreaterThan(5);
  expect(turns.every((at, n) => at <= (turns[n + 1] ?? 100))).toBe(true);
});

test("work that was done before is not done again", async () => {
  let steps = 0;
  await inPieces(() => {
    steps += 1;
    return false;
  });
  expect(steps).toBe(1);
});
