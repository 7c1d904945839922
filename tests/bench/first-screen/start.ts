/** One start of a page: what it fetches, how long it keeps the main thread, when it can be touched. */
import type { Browser, BrowserContext, Page } from "playwright-core";
import { newPhone, slowDown } from "../built-app.ts";
import { type Tasks, tasksOf } from "../tasks.ts";
import { installStartProbe, USABLE } from "./probe.ts";

export interface Start {
  usableMs: number;
  /** What was asked for before it could be touched. */
  requests: number;
  scriptBytes: number;
  bytes: number;
  /** The same of everything that is fetched. */
  allRequests: number;
  allBytes: number;
  tapsMs: number[];
  /** The main thread's, until all is there. */
  tasks: Tasks;
}

/** All is there, or as good as: nothing is fetched for so long. */
const QUIET_MS = 2500;
const TAPS = 6;
const TAP_EVERY_MS = 120;
/** In the masthead of the app: nothing is there to be operated. */
const TAP_AT = { x: 24, y: 16 };

/**
 * Until all is measured nothing is asked of the page: the driver's own script would be a task of 40 ms
 * at four times slower.
 * @param slowness so many times slower than this machine
 */
export async function startOf(
  browser: Browser,
  url: string,
  slowness: number,
  context?: BrowserContext,
): Promise<Start> {
  const own = context ?? (await newPhone(browser));
  const page = await own.newPage();
  await page.addInitScript(installStartProbe, USABLE);
  await slowDown(page, slowness);
  const tasks = await tasksOf(browser, page, async () => {
    const usable = page.waitForEvent("console", (written) => written.text() === USABLE);
    await page.goto(url, { waitUntil: "commit" });
    await usable;
    await tap(page);
    await page.waitForLoadState("networkidle");
    await page.waitForTimeout(QUIET_MS);
  });
  const found = await page.evaluate(resultOf);
  await (context ? page.close() : own.close());
  return { ...found, tasks };
}

/** Touches what does nothing: what is timed is how long the page lets a touch wait. */
async function tap(page: Page): Promise<void> {
  for (let n = 0; n < TAPS; n += 1) {
    await page.mouse.click(TAP_AT.x, TAP_AT.y);
    await page.waitForTimeout(TAP_EVERY_MS);
  }
}

/** Self-contained, since it is sent to the page as text. */
function resultOf(): Omit<Start, "tasks"> {
  const { usableMs = Number.NaN, tapsMs } = window.startProbe;
  const entries = performance.getEntries() as PerformanceResourceTiming[];
  const all = entries.filter(({ entryType }) => ["navigation", "resource"].includes(entryType));
  const first = all.filter(({ startTime }) => startTime < usableMs);
  let [bytes, scriptBytes, allBytes] = [0, 0, 0];
  for (const { encodedBodySize } of all) allBytes += encodedBodySize;
  for (const { name, encodedBodySize } of first) {
    bytes += encodedBodySize;
    if (/\.js$/.test(name)) scriptBytes += encodedBodySize;
  }
  return {
    ...{ usableMs, bytes, scriptBytes, allBytes, tapsMs },
    requests: first.length,
    allRequests: all.length,
  };
}
