import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";

let browser: Browser;
let server: AppServer;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  cpSync(inject("appFolder"), folder, { recursive: true });
  browser = await launchChromium();
  server = await startAppServer("/", folder);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

test("a new version is offered between sessions, never in one, and is taken when told to", async () => {
  const bench = await Bench.open(browser, { url: server.url });
  const { page } = bench;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await bench.type("F1 two pounds");
  appendFileSync(join(folder, "sw.js"), "\n// A later version.\n");
  await page.reload();
  await page.waitForFunction(async () => {
    const worker = await navigator.serviceWorker.getRegistration();
    return worker?.waiting !== null && worker?.waiting !== undefined;
  });
  const offer = page.getByText("A new version is here.");
  // Longer than it takes to be offered, as the end of the session shows.
  await page.waitForTimeout(1500);
  expect(await offer.count()).toBe(0);
  await bench.type("all out");
  await offer.waitFor();
  const loaded = page.waitForEvent("load");
  await page.getByRole("button", { name: "Take it now" }).click();
  await loaded;
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("2 lb");
  const worker = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return { waits: registration?.waiting !== null, leads: registration?.active?.state };
  });
  expect(worker).toEqual({ waits: false, leads: "activated" });
  await bench.close();
});
