import { fileURLToPath } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { createServer, type ViteDevServer } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { STORE_CONTRACT } from "../log/store-contract.ts";
import { launchChromium } from "./chromium.ts";
import { COPY_CHECKS } from "./copy-checks.ts";
import { IDB_CHECKS } from "./store-checks.ts";

const CHECKS = [...STORE_CONTRACT, ...IDB_CHECKS, ...COPY_CHECKS];

let server: ViteDevServer;
let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  server = await createServer({
    root: fileURLToPath(new URL("../..", import.meta.url)),
    configFile: false,
    logLevel: "error",
    cacheDir: "node_modules/.vite-store-page",
    server: { host: "127.0.0.1", port: 0, hmr: false },
    // Found at the start, not on the way: finding one later loads the page anew.
    optimizeDeps: { entries: ["tests/browser/store-page.ts"] },
  });
  await server.listen();
  browser = await launchChromium();
  context = await browser.newContext();
  page = await openPage();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function openPage(): Promise<Page> {
  const opened = await context.newPage();
  await opened.goto(`${server.resolvedUrls?.local[0]}tests/browser/store-page.html`);
  await opened.waitForFunction(() => "storePage" in window);
  return opened;
}

test("the page has every check", async () => {
  const names = CHECKS.map((check) => check.name);
  expect(await page.evaluate(() => window.storePage.names)).toEqual(names);
  expect(new Set(names).size).toBe(names.length);
});

test.each(CHECKS)("a store in IndexedDB $name", async ({ name }) => {
  await page.evaluate((name) => window.storePage.run(name), name);
});

test("two pages that write at once share the numbers out, and each hears the other", async () => {
  const times = 50;
  const other = await openPage();
  const both = [page, other];
  const appended = await Promise.all(
    both.map((one) => one.evaluate((times) => window.storePage.append(times), times)),
  );
  const numbers = appended.flat().map((event) => event.seq);
  const sorted = [...numbers].sort((a, b) => a - b);
  expect(sorted).toEqual(Array.from({ length: 2 * times }, (_, n) => n + 1));
  expect(new Set(appended.flat().map((event) => event.device)).size).toBe(1);

  const ids = appended
    .flat()
    .map((event) => event.id)
    .sort();
  for (const one of both) {
    await one.waitForFunction((count) => window.storePage.heard().length >= count, ids.length);
    expect((await one.evaluate(() => window.storePage.heard())).sort()).toEqual(ids);
  }
  await other.close();
});

test("what was stored is there after the page is gone in the middle of writing", async () => {
  const doomed = await openPage();
  await doomed.evaluate(() => window.storePage.append(5));
  void doomed.evaluate(() => window.storePage.append(10_000)).catch(() => {});
  await doomed.waitForFunction(() => window.storePage.heard().length > 20);
  const heard = await doomed.evaluate(() => window.storePage.heard());
  await doomed.close();

  const stored = await page.evaluate(() => window.storePage.stored());
  const ids = new Set(stored.map((event) => event.id));
  expect(heard.filter((id) => !ids.has(id))).toEqual([]);
  const numbers = stored.map((event) => event.seq).sort((a, b) => a - b);
  expect(numbers).toEqual(numbers.map((_, n) => n + 1));
});

test("goes on after the browser has cut the connection and cleared its data away", async () => {
  await page.evaluate(() => window.storePage.append(3));
  const devTools = await context.newCDPSession(page);
  await devTools.send("Storage.clearDataForOrigin", {
    origin: new URL(page.url()).origin,
    storageTypes: "indexeddb",
  });
  const appended = await page.evaluate(() => window.storePage.append(2));
  expect(appended.map((event) => event.seq)).toEqual([1, 2]);
  expect(await page.evaluate(() => window.storePage.stored())).toEqual(appended);
});
