import { test } from "vitest";
import { tryTrouble } from "../trials/storage/storage.ts";
import { TROUBLES } from "../trials/storage/troubles.ts";
import { appInBrowser } from "./app-in-browser.ts";

const app = appInBrowser();

const LIMIT = { timeout: 120_000 };

for (const trouble of TROUBLES) {
  // Side by side, since most of it is waiting for the app to try again by itself.
  test.concurrent(`what is said outlives that ${trouble.name}`, LIMIT, async ({ expect }) => {
    expect(await tryTrouble(app.browser, app.url, trouble)).toEqual([]);
  });
}
