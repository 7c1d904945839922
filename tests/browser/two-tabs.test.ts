import { expect, test } from "vitest";
import { tryTabs } from "../trials/tabs/tabs.ts";

/** `npm run trials` has hundreds. */
const CASES = 20;

test("two tabs that write at once, with connections cut, never give a number twice", async () => {
  const { events, faults } = await tryTabs(CASES, 1);
  expect(faults).toEqual([]);
  expect(events).toBeGreaterThan(5 * CASES);
});
