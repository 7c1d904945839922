import { expect, test } from "vitest";
import { fuzzStrangersInput } from "./fuzz.ts";

test("links, logs and tables damaged in all ways are taken in whole or refused in a sentence", async () => {
  const { taken, refused, faults } = await fuzzStrangersInput(1500, 1);
  expect(faults.slice(0, 3)).toEqual([]);
  expect(taken).toBeGreaterThan(80);
  expect(refused).toBeGreaterThan(800);
});
