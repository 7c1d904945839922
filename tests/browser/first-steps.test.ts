/** A phone that the app was never opened on. */
import { expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser("/some/folder/");

test("a phrase is said and seen understood, put right by voice, and nothing of it is kept", async () => {
  const bench = await Bench.open(app.browser, { url: app.url, isNew: true });
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
  await page.goto(app.url);
  await page.locator('main[aria-label="Live"]').waitFor();
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test("they are passed over at a touch, work by typing without a microphone, and can be had again", async () => {
  const bench = await Bench.open(app.browser, { url: app.url, isNew: true, speech: false });
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
