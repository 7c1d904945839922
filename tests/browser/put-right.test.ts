/** Review on a phone, by thumb, by voice, by keyboard and by ear. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { describe, expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const app = appInBrowser();

const rows = async ({ page }: Bench) =>
  (await page.locator(".entry-said").allTextContents()).toReversed();

test("by thumb: held buttons, a split, a change and all it alters, undone and kept over a reload", async () => {
  const context = await app.browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const bench = await Bench.open(app.browser, { url: app.url, context });
  const { page } = bench;
  const tap = (name: string | RegExp) => page.getByRole("button", { name }).tap();
  await bench.type("depth half a metre", "three small roach", "carp two pounds");
  await bench.go("Review");

  await tap(/3 roach/);
  await tap("More to do");
  await tap("Split into 2 and 1");
  await expect
    .poll(() => rows(bench))
    .toEqual(["Depth half a metre", "2 roach", "Roach", "Carp, 2 pounds"]);

  await tap(/^\d\d:\d\d ?Depth/);
  await tap("Depth down 10 cm");
  await page.getByText("Fish 1 to 4: depth 40 cm, was 50 cm").waitFor();
  await tap("Save");
  await expect.poll(() => rows(bench)).toContain("Depth 0.4 metres");

  await tap(/Carp, 2 pounds/);
  const up = page.getByRole("button", { name: "Weight up 1 lb" });
  await up.dispatchEvent("pointerdown");
  await page.locator(".stepper output", { hasText: /^[5-9] lb/ }).waitFor();
  await up.dispatchEvent("pointerup");
  await tap("Save");
  await expect.poll(() => rows(bench)).not.toContain("Carp, 2 pounds");

  for (const step of ["carp", "depth", "split"]) {
    const before = await rows(bench);
    await tap("Undo");
    await expect.poll(() => rows(bench), { message: step }).not.toEqual(before);
  }
  expect(await rows(bench)).toEqual(["Depth half a metre", "3 roach", "Carp, 2 pounds"]);
  await tap("Redo");
  await expect.poll(() => rows(bench)).toHaveLength(4);
  await page.reload();
  await page.getByRole("button", { name: "Redo" }).waitFor();
  await expect.poll(() => rows(bench)).toHaveLength(4);
  await tap("Redo");
  await expect.poll(() => rows(bench)).toContain("Depth 0.4 metres");
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test("by voice: each doubt is read out and answered, and “that” is the one on the screen", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.type("skimmer thirty", "roach forty", "carp two pounds");
  await bench.go("Review");
  await page.getByText("2 left").waitFor();
  await page.getByLabel("Read it out to me").check();
  await expect
    .poll(() => bench.spoken())
    .toMatch(/^Fish 1, skimmer, 30 centimetres, at \d\d:\d\d\. Right\?$/);
  await page.getByLabel("Type a phrase").fill("make that ten ounces");
  await page.keyboard.press("Enter");
  await page.getByText("1 left").waitFor();
  await expect.poll(() => bench.spoken()).toMatch(/Next\. Fish 2, roach, 40 centimetres/);
  await page.getByLabel("Type a phrase").fill("yes");
  await page.keyboard.press("Enter");
  await page.getByText("All looked at.").first().waitFor();
  expect(await rows(bench)).toEqual([
    expect.stringContaining("Skimmer, 10 ounces"),
    "Roach, 40 centimetres",
    "Carp, 2 pounds",
  ]);
  await bench.close();
});

test("by keyboard: one doubt after the other without losing one's place", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.type("skimmer thirty", "roach forty");
  await bench.go("Review");
  await page.getByRole("button", { name: "Right as it is" }).focus();
  await page.keyboard.press("Enter");
  await page.getByText("1 left").waitFor();
  const focused = () => page.evaluate(() => document.activeElement?.textContent);
  await expect.poll(focused).toBe("To look at");
  await page.keyboard.press("Tab");
  await expect.poll(focused).toBe("Right as it is");
  await page.keyboard.press("Enter");
  await page.getByText("All looked at.").waitFor();
  await bench.close();
});

describe.each(["light", "dark"] as const)("in %s colours", (colorScheme) => {
  test("axe finds nothing in an entry with all that can be done about it", async () => {
    const bench = await Bench.open(app.browser, { url: app.url });
    const { page } = bench;
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await bench.type("depth half a metre", "skimmer thirty", "three small roach", "two roach");
    await bench.go("Review");
    await page.getByRole("button", { name: "Something else" }).click();
    await page.locator(".entry", { hasText: "3 roach" }).click();
    await page.getByRole("button", { name: "More fields" }).last().click();
    await page.getByRole("button", { name: "More to do" }).click();
    await page.evaluate(AXE);
    const { violations } = await page.evaluate<AxeResults>("axe.run()");
    expect(
      violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`)),
    ).toEqual([]);
    await bench.close();
  });
});

test("on small phones and with letters twice as large nothing lies beside the screen", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.type("depth half a metre", "skimmer thirty", "three small roach", "two roach");
  await bench.go("Review");
  await page.locator(".entry", { hasText: "3 roach" }).click();
  await page.getByRole("button", { name: "More to do" }).click();
  for (const [width, height] of [
    [390, 844],
    [360, 640],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const px of [18, 36]) {
      expect([width, px, await beside(bench, px)]).toEqual([width, px, []]);
    }
  }
  await bench.close();
});

/** What is wider than its place, with letters of this size. */
const beside = ({ page }: Bench, px: number) =>
  page.evaluate((size) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`:root { font-size: ${size}px !important }`);
    document.adoptedStyleSheets = [sheet];
    return [...document.querySelectorAll("main, main *")]
      .filter((one) => !one.closest(".for-ears") && getComputedStyle(one).display !== "inline")
      .filter((one) => one.scrollWidth > one.clientWidth + 1)
      .map((one) => `${one.tagName} ${one.className}: ${one.textContent?.slice(0, 40)}`);
  }, px);
