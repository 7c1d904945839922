import { expect, test } from "vitest";
import { typeInBoth } from "../trials/tabs/both-tabs.ts";
import { tryTabs } from "../trials/tabs/tabs.ts";
import { startAppServer } from "./app-server.ts";
import { launchChromium } from "./chromium.ts";

/** `npm run trials` has hundreds. */
const CASES = 20;

test("two tabs that write at once, with connections cut, never give a number twice", async () => {
  const { events, faults } = await tryTabs(CASES, 1);
  expect(faults).toEqual([]);
  expect(events).toBeGreaterThan(5 * CASES);
});

test("the app in two tabs shows the same fish in both, each with a number of its own", async () => {
  const server = await startAppServer();
  const browser = await launchChromium();
  try {
    expect(await typeInBoth(browser, server.url, { entries: 10, seed: 1 })).toEqual([]);
  } finally {
    await browser.close();
    await server.close();
  }
});
