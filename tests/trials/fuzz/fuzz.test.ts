import { expect, test } from "vitest";
import { fuzzStrangersInput } from "./fuzz.ts";

test("what strangers send, damaged in all ways, is taken in whole or refused", async () => {
  const { taken, refused, faults } = await fuzzStrangersInput(1500, 1);
  expect(faults.slice(0, 3)).toEqual([]);
  expect(taken).toBeGreaterThan(80);
  expect(refused).toBeGreaterThan(800);
});
