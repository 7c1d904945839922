/** A phone that the app was never opened on. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";

let browser: Browser;
let server: AppServer;

beforeAll(async () => {
  browser = await launchChromium();
  server = await startAppServer("/some/folder/");
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

test("a phrase is said and seen understood, put right by voice, and nothing of it is kept", async () => {
  const bench = await Bench.open(browser, { url: server.url, isNew: true });
  const { page } = bench;
  await page.getByRole("heading", { name: "First steps" }).waitFor();
  await bench.listen();
  await bench.hear(["F1 two pounds eight"], 0.9);
  await page.getByText("F1, 2 pounds 8 ounces").first().waitFor();
  await page.getByRole("button", { name: "Next" }).click();
  await bench.hear(["make that three pounds"], 0.9);
  await page.locator(".first-run-understood", { hasText: "3 pounds" }).waitFor();
  await page.getByRole("button", { name: "Next" }).click();
  await page.getByRole("button", { name: "Let me hear it" }).click();
  await expect.poll(() => bench.spoken()).toBe("Three pounds from one fish.");
  await page.getByRole("link", { name: "Go to the water" }).click();
  await page.getByRole("button", { name: "Start the session" }).waitFor();
  expect(await page.getByText("3 pounds").count()).toBe(0);
  await page.goto(server.url);
  await page.locator('main[aria-label="Live"]').waitFor();
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test("they are passed over at a touch, work by typing without a microphone, and can be had again", async () => {
  const bench = await Bench.open(browser, { url: server.url, isNew: true, speech: false });
  const { page } = bench;
  await page.getByLabel("Type a phrase").fill("F1 two pounds eight");
  await page.keyboard.press("Enter");
  await page.getByText("F1, 2 pounds 8 ounces").first().waitFor();
  await page.getByRole("link", { name: "Skip" }).click();
  await page.getByRole("button", { name: "Start the session" }).waitFor();
  await page.reload();
  await page.locator('main[aria-label="Live"]').waitFor();
  await bench.go("First steps");
  await page.getByText("Step 1 of 3").waitFor();
  await bench.close();
});
