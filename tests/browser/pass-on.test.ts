/** Each form of passing on, opened in what it is meant for. */
import { readFileSync } from "node:fs";
import jsqr from "jsqr";
import Papa from "papaparse";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Page } from "playwright-core";
import { PNG } from "pngjs";
import { afterEach, beforeEach, expect, test } from "vitest";
import { randomNumbers } from "../analysis/fixtures/session.ts";
import { logOf, longDay } from "../share/long-day.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";
import { asFile, goTo, phoneWith, takeIn } from "./phone-with.ts";

const app = appInBrowser("/some/folder/");
let bench: Bench;
let page: Page;

const day = longDay(40, randomNumbers(5));

beforeEach(async () => {
  bench = await phoneWith(app.browser, app.url, { log: logOf(day), session: day.id });
  page = bench.page;
  await page.evaluate(() =>
    Object.defineProperty(navigator, "share", { configurable: true, value: undefined }),
  );
  await bench.context.grantPermissions(["clipboard-read", "clipboard-write"]);
});

afterEach(async () => {
  await bench.close();
});

const choose = (form: string) => page.getByLabel(form, { exact: true }).check();

async function saved(button: string): Promise<{ name: string; content: Buffer }> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).click();
  const file = await download;
  return { name: file.suggestedFilename(), content: readFileSync(await file.path()) };
}

async function copiedLink(): Promise<string> {
  await page.getByRole("button", { name: "Share the link" }).click();
  await page.getByText("Copied: paste it into a message.").waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
}

test("the picture is a PNG 1080 wide with something on it, and the one that was shown", async () => {
  await choose("Picture");
  const shown = page.locator(".goes-out-picture");
  await shown.waitFor();
  const { name, content } = await saved("Share the picture");
  expect(name).toMatch(/^pegscribe-2026-06-06\.png$/);
  const { width, height, data } = PNG.sync.read(content);
  expect(width).toBe(1080);
  expect(height).toBeGreaterThan(1000);
  expect(await shown.evaluate((image: HTMLImageElement) => image.naturalHeight)).toBe(height);
  const dark = Array.from({ length: width * height }, (_, pixel) => data[4 * pixel] ?? 255).filter(
    (red) => red < 60,
  );
  expect(dark.length / (width * height)).toBeGreaterThan(0.02);
  expect(dark.length / (width * height)).toBeLessThan(0.5);
  expect(await shown.getAttribute("alt")).not.toMatch(/Osier|peg 17/);
  expect(bench.complaints).toEqual([]);
});

test("the link opens read-only on a phone that never saw the app, and asks nobody else", async () => {
  await choose("Link");
  const url = await copiedLink();
  const text = page.locator("details p").first();
  const context = await app.browser.newContext({ viewport: { width: 390, height: 844 } });
  const other = await context.newPage();
  const asked: string[] = [];
  other.on("request", (request) => asked.push(request.url()));
  await other.goto(url);
  await other.getByRole("heading", { name: "A session passed on to you" }).waitFor();
  await other.getByText("40 fish").first().waitFor();
  expect(await other.getByRole("row").count()).toBe(41);
  expect(await other.locator("main").textContent()).toContain(await text.textContent());
  expect(await other.locator("main").textContent()).not.toMatch(/Osier|peg 17/);
  expect(asked.filter((one) => !one.startsWith(app.url) && !/^(data|blob):/.test(one))).toEqual([]);
  expect(asked.filter((one) => one.includes("v1."))).toEqual([]);
  await other.getByRole("link", { name: "Open your own log" }).click();
  await other.getByRole("heading", { level: 1 }).waitFor();
  expect(await other.locator("main").textContent()).not.toContain("40 fish");
  await context.close();
});

test("the code is the same link, read by a camera", async () => {
  await choose("Link");
  await page.getByLabel("With each fish and its time").uncheck();
  await page.locator(".qr").waitFor();
  const url = await copiedLink();
  // As many dots as phones have: with fewer, cells are of uneven widths.
  const devtools = await bench.context.newCDPSession(page);
  const phone = { width: 390, height: 844, deviceScaleFactor: 3, mobile: false };
  await devtools.send("Emulation.setDeviceMetricsOverride", phone);
  const read = async () => {
    const shot = PNG.sync.read(await page.locator(".qr").screenshot());
    return jsqr(new Uint8ClampedArray(shot.data), shot.width, shot.height)?.data;
  };
  // On a busy machine the code follows the link with a delay.
  await expect.poll(read, { timeout: 20_000 }).toBe(url);
  await page.goto(url);
  await page.getByText("this short form holds no single fish").waitFor();
});

test("a link too long for a message goes as a file, and opens from it", async () => {
  const long = { ...longDay(1000, randomNumbers(6)), id: "long" };
  const other = await phoneWith(app.browser, app.url, { log: logOf(long), session: "long" });
  bench = other;
  page = other.page;
  await page.evaluate(() =>
    Object.defineProperty(navigator, "share", { configurable: true, value: undefined }),
  );
  await choose("Link");
  await page.getByText("the link is too long for a message").waitFor();
  await page.getByText("Too long for a QR code.").waitFor();
  const { content } = await saved("Share it as a file");
  await goTo(page, "files");
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "session.txt", mimeType: "text/plain", buffer: content });
  await page.getByRole("heading", { name: "A session passed on to you" }).waitFor();
  await page.getByText("1000 fish").first().waitFor();
});

test("paper takes a page or two of A4, with the sums on it and nothing of the screen", async () => {
  await page.getByLabel("Name the water").check();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const { numPages, getPage } = await pages(pdf);
  expect(numPages).toBeLessThanOrEqual(2);
  const first = await getPage(1);
  expect(first.view.slice(2).map(Math.round)).toEqual([595, 842]);
  const { items } = await first.getTextContent();
  // Letters that are drawn as one come back as one.
  const text = items
    .map((item) => ("str" in item ? item.str : ""))
    .join("")
    .normalize("NFKC");
  expect(text).toContain("Osier Lake");
  expect(text).toMatch(/from\s*40\s*fi\s*sh/);
  expect(text).toContain("Set-ups");
  expect(text).not.toMatch(/peg 17|Share|Pass it on|Review/);
});

async function pages(pdf: Buffer) {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  return {
    numPages: document.numPages,
    getPage: (number: number) => document.getPage(number),
  };
}

test("everything goes to another phone as one file, once, with the settings if wanted", async () => {
  await page.evaluate(() => {
    const kept = JSON.parse(localStorage.getItem("pegscribe.settings") ?? "{}");
    localStorage.setItem("pegscribe.settings", JSON.stringify({ ...kept, weight: "kg" }));
  });
  await page.reload();
  await bench.go("Live");
  await bench.type("start the session", "carp four pounds");
  await goTo(page, "files");
  const { content } = await saved("Save the log as a file");
  const other = await Bench.open(app.browser, { url: app.url });
  const file = asFile(content.toString());
  expect(await takeIn(other, file)).toMatch(/^\d+ records of 1 session taken in\.$/);
  await other.page.getByRole("button", { name: "Set this phone the same" }).click();
  await other.page.getByText("This phone is set the same now.").waitFor();
  expect(await other.page.evaluate(() => localStorage.getItem("pegscribe.settings"))).toContain(
    '"weight":"kg"',
  );
  await other.page.reload();
  expect(await takeIn(other, file)).toBe("All of it was here already.");
  await other.close();
});

test("the tables open as tables, and the one of events comes back", async () => {
  await goTo(page, "files");
  const events = await saved("Table of events (CSV)");
  const fish = await saved("Table of fish (CSV)");
  const rows = (content: Buffer) => {
    const { data, errors } = Papa.parse<Record<string, string>>(content.toString(), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    return data;
  };
  expect(rows(fish.content)).toHaveLength(40);
  expect(rows(events.content)).toHaveLength(day.entries.length + 1);
  const other = await Bench.open(app.browser, { url: app.url });
  expect(await takeIn(other, asFile(events.content.toString(), "events.csv"))).toMatch(
    /records of 1 session taken in/,
  );
  expect(await takeIn(other, asFile(fish.content.toString(), "fish.csv"))).toMatch(/table of fish/);
  await other.close();
});

test("a share sheet is used where there is one, and says what came of it", async () => {
  await page.evaluate(() => {
    const given: string[] = [];
    Object.assign(window, { given });
    const share = async ({ files, url, text }: ShareData) => {
      given.push(files?.[0]?.type ?? url ?? text ?? "");
      if (given.length === 3) throw new DOMException("No", "AbortError");
    };
    Object.defineProperty(navigator, "share", { value: share });
    Object.defineProperty(navigator, "canShare", { value: () => true });
  });
  await page.getByRole("button", { name: "Share the text" }).click();
  await page.getByText("Handed over.").waitFor();
  await choose("Picture");
  await page.locator(".goes-out-picture").waitFor();
  await page.getByRole("button", { name: "Share the picture" }).click();
  await page.getByText("Handed over.").waitFor();
  await choose("Link");
  await page.locator(".qr, details").first().waitFor();
  await page.getByRole("button", { name: "Share the link" }).click();
  await page.getByText("Not sent.").waitFor();
  const given = await page.evaluate(() => (window as unknown as { given: string[] }).given);
  expect(given).toEqual([
    expect.stringContaining("40 fish"),
    "image/png",
    expect.stringMatching(/#v1\./),
  ]);
});
