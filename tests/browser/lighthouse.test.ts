import { expect, inject, test } from "vitest";
import { judge } from "./lighthouse-run.ts";

// Performance is measured on the machine at hand, so it is printed (`npm run lighthouse`) and not held.
test("Lighthouse finds nothing amiss in accessibility and best practices", async () => {
  const { scores, faults } = await judge(inject("appFolder"));
  expect(faults).toEqual([]);
  expect(scores).toMatchObject({ accessibility: 100, "best-practices": 100 });
}, 120_000);
