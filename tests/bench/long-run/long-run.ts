/** Eight hours on the Live screen, with a phrase a minute, at two hundred times the pace. */
import type { Browser, CDPSession, Page } from "playwright-core";
import { Bench } from "../../browser/bench.ts";
import { newPhone, withBuiltApp } from "../built-app.ts";
import { type Measured, rounded } from "../part.ts";
import { installPaced } from "./paced.ts";

export const title = "Long run";

const SPEED = 200;
const HOURS = 8;
const PHRASES = [
  "rig's in",
  "F1 two pounds eight",
  "fed twice",
  "missed one",
  "skimmer ten ounces",
  "ten centimetres shallower",
  "hook pulled",
  "three small roach",
  "carp four pounds",
  "scratch that",
];
const MINUTE_MS = 60_000;
/** A frame that comes later than this has left one out, at sixty a second. */
const LATE_MS = 25;

async function heapOf(page: Page, session: CDPSession): Promise<number> {
  await session.send("HeapProfiler.collectGarbage");
  const heap = await page.evaluate(
    () => (performance as unknown as { memory: { usedJSHeapSize: number } }).memory.usedJSHeapSize,
  );
  return heap / 2 ** 20;
}

const framesOf = (page: Page): Promise<number[]> =>
  page.evaluate(() => window.longRun.frames.splice(0));

/** One hour by the page's clock. */
async function anHour({ page }: Bench): Promise<void> {
  for (let minute = 0; minute < 60; minute += 1) {
    const from = Date.now();
    await page.waitForFunction(() => window.scripted.isListening());
    const phrase = PHRASES[minute % PHRASES.length] as string;
    await page.evaluate((said) => window.scripted.say([said], 0.9), phrase);
    const left = MINUTE_MS / SPEED - (Date.now() - from);
    await new Promise((done) => setTimeout(done, Math.max(0, left)));
  }
}

/** Milliseconds of processor that the browser's pages have used so far. */
async function workOfPages(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  await session.detach();
  const pages = processInfo.filter(({ type }) => type === "renderer");
  return 1000 * pages.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
}

/** A page that does nothing but count its frames: what it leaves out is the machine's doing. */
async function idlePage(browser: Browser): Promise<Page> {
  const page = await (await newPhone(browser)).newPage();
  await page.addInitScript(installPaced, 1);
  await page.goto("data:text/html,<p>nothing</p>");
  return page;
}

const lateOf = (frames: readonly number[]): string =>
  `${frames.filter((ms) => ms > LATE_MS).length} of ${frames.length}`;

async function hours(bench: Bench, browser: Browser): Promise<(string | number)[][]> {
  const { page } = bench;
  const idle = await idlePage(browser);
  const session = await page.context().newCDPSession(page);
  const rows: (string | number)[][] = [
    ["0", "–", "–", "–", rounded(await heapOf(page, session), 1)],
  ];
  for (let hour = 1; hour <= HOURS; hour += 1) {
    await Promise.all([framesOf(page), framesOf(idle)]);
    const before = await workOfPages(browser);
    await anHour(bench);
    const work = (await workOfPages(browser)) - before;
    const [own, others] = [await framesOf(page), await framesOf(idle)];
    const heap = await heapOf(page, session);
    rows.push([hour, lateOf(own), lateOf(others), rounded(work / 3600), rounded(heap, 1)]);
  }
  return rows;
}

export function measure(): Promise<Measured> {
  return withBuiltApp(async ({ browser, server }) => {
    const context = await newPhone(browser);
    await context.addInitScript(installPaced, SPEED);
    const bench = await Bench.open(browser, { url: server.url, context });
    await bench.listen();
    await bench.say("start the session");
    const rows = await hours(bench, browser);
    await bench.close();
    return {
      tables: [
        {
          caption: `Live, a phrase a minute and a tick a second, ${SPEED} times faster than they come, so ${SPEED} ticks a second; beside it a page that does nothing:`,
          head: [
            "hour",
            `frames over ${LATE_MS} ms`,
            "of the idle page",
            "processor a tick, ms",
            "heap, MiB",
          ],
          rows,
        },
      ],
      figures: {},
    };
  });
}
