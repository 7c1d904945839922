import { expect, test } from "vitest";
import { missingVersions, OLD_LOGS, tryOldLog } from "../trials/old-logs/old-logs.ts";
import { appInBrowser } from "./app-in-browser.ts";

const app = appInBrowser();

test("a log of every earlier version is kept", () => {
  expect(missingVersions()).toEqual([]);
});

test.each(OLD_LOGS)("the app opens a log of $name and goes on with it", async (log) => {
  expect(await tryOldLog(app.browser, app.url, log)).toEqual([]);
});
