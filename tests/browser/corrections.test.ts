import { expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser();

test("by voice: amended, taken back step by step, taken out by number", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const weight = () => bench.part("Weight and count").textContent();
  await bench.listen();
  await bench.say("F1 one pound", "carp two pounds", "make that three pounds");
  expect(await weight()).toContain("4 lb");
  await bench.say("scratch that");
  expect(await weight()).toContain("3 lb");
  await bench.say("last one was a tench", "take out fish one");
  expect(await weight()).toContain("2 lb");
  await bench.go("Review");
  const entries = bench.page.locator(".entries");
  expect(await entries.textContent()).toMatch(/tench, 2 pounds/i);
  expect(await entries.locator("li").count()).toBe(1);
  await bench.close();
});

test("by touch: the last thing said is taken back, and said again where it was wrong", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.listen();
  await bench.say("carp four pounds", "fish two pounds, feeding");
  await bench.page.getByRole("button", { name: "Take it back" }).click();
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("4 lb");
  await bench.close();
});

test("by touch: a guess at a number waits first in the review, and its other guess is one touch away", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.listen();
  await bench.hear(["carp four pounds", "carp five pounds"], 0.2);
  await bench.taken("carp four pounds");
  await bench.go("Review");
  await page.getByText("1 left").waitFor();
  await page.getByRole("button", { name: /carp, 5 pounds/i }).click();
  await expect.poll(() => page.locator(".entries").textContent()).toMatch(/carp, 5 pounds/i);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => page.locator(".entries").textContent()).toMatch(/carp, 4 pounds/i);
  await page.getByRole("button", { name: "Redo" }).click();
  await expect.poll(() => page.locator(".entries").textContent()).toMatch(/carp, 5 pounds/i);
  await bench.close();
});

test("by touch: a line taken for talk becomes a note, a weight is stepped, an entry goes and comes back", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.type("that was a lovely fish", "carp four pounds");
  await bench.go("Review");
  await page.getByRole("button", { name: "Keep as a note" }).click();
  await expect.poll(() => page.locator(".entries li").count()).toBe(2);
  await page.getByRole("button", { name: /carp, 4 pounds/i }).click();
  await page.getByRole("button", { name: "Weight up 1 lb" }).click();
  await page.getByRole("button", { name: "Save" }).click();
  await expect.poll(() => page.locator(".entries").textContent()).toMatch(/carp, 5 pounds/i);
  await page.getByRole("button", { name: /carp, 5 pounds/i }).click();
  await page.getByRole("button", { name: "Take out" }).click();
  await expect.poll(() => page.locator(".entries li").count()).toBe(1);
  await page.getByRole("button", { name: /^Bring back/ }).click();
  await expect.poll(() => page.locator(".entries li").count()).toBe(2);
  await bench.close();
});
