import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startAppServer } from "./app-server.ts";
import { launchChromium } from "./chromium.ts";

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

test("opens a second time when its server is gone", async () => {
  const server = await startAppServer("/some/folder/");
  const page = await browser.newPage();
  await page.goto(server.url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.register("./sw.js");
    await navigator.serviceWorker.ready;
  });
  await server.close();
  await expect(fetch(server.url)).rejects.toThrow();

  const missing: string[] = [];
  page.on("requestfailed", (request) => {
    // What is still loading when the page is left is broken off, and not missing.
    if (request.failure()?.errorText !== "net::ERR_ABORTED") missing.push(request.url());
  });
  await page.reload();
  await page.locator("#app > *").first().waitFor();
  await page.goto(`${server.url}?from=home-screen`);
  await page.locator("#app > *").first().waitFor();
  expect(missing).toEqual([]);
});

test("can be put on a home screen", async () => {
  const server = await startAppServer("/some/folder/");
  const page = await browser.newPage();
  await page.goto(server.url);
  const session = await page.context().newCDPSession(page);
  const { errors, data = "" } = await session.send("Page.getAppManifest");
  expect(errors).toEqual([]);
  for (const { src, type } of JSON.parse(data).icons) {
    const icon = await fetch(server.url + src);
    expect([src, icon.headers.get("content-type")]).toEqual([src, type]);
  }
  for (const { src, sizes } of JSON.parse(data).screenshots) {
    const picture = Buffer.from(await (await fetch(server.url + src)).arrayBuffer());
    expect([src, `${picture.readUInt32BE(16)}x${picture.readUInt32BE(20)}`]).toEqual([src, sizes]);
  }
  for (const { url } of JSON.parse(data).shortcuts) {
    await page.goto(new URL(url, server.url).href);
    await page.locator("main h1").first().waitFor();
  }
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  // A test's profile is a private one, from which nothing is ever put on a home screen.
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(["in-incognito"]);
  await server.close();
});
