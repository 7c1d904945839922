import { expect, test } from "vitest";
import { costOf, SHAPES } from "./large.ts";

/** Processor time, of which a loaded machine takes none away; the better of two tries. */
const MOST_MS = 1000;

test.each(Object.entries(SHAPES))("20,000 times %s", async (_, shape) => {
  const first = await costOf(shape);
  const second = await costOf(shape);
  expect(Math.min(first.foldMs, second.foldMs)).toBeLessThan(MOST_MS);
  expect(Math.min(first.showMs, second.showMs)).toBeLessThan(2 * MOST_MS);
});
