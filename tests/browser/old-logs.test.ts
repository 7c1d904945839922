import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { missingVersions, OLD_LOGS, tryOldLog } from "../trials/old-logs/old-logs.ts";
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

test("a log of every earlier version is kept", () => {
  expect(missingVersions()).toEqual([]);
});

test.each(OLD_LOGS)("the app opens a log of $name and goes on with it", async (log) => {
  expect(await tryOldLog(browser, server.url, log)).toEqual([]);
});
