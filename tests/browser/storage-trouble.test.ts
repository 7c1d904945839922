import type { Browser } from "playwright-core";
import { afterAll, beforeAll, test } from "vitest";
import { tryTrouble } from "../trials/storage/storage.ts";
import { TROUBLES } from "../trials/storage/troubles.ts";
import { type AppServer, startAppServer } from "./app-server.ts";
import { launchChromium } from "./chromium.ts";

let browser: Browser;
let server: AppServer;

beforeAll(async () => {
  server = await startAppServer();
  browser = await launchChromium();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const LIMIT = { timeout: 120_000 };

for (const trouble of TROUBLES) {
  // Side by side, since most of it is waiting for the app to try again by itself.
  test.concurrent(`what is said outlives that ${trouble.name}`, LIMIT, async ({ expect }) => {
    expect(await tryTrouble(browser, server.url, trouble)).toEqual([]);
  });
}
