/** The first screen at four times slower, beside a bare page; and later starts without a server. */
import { join } from "node:path";
import type { Browser, BrowserContext } from "playwright-core";
import { serveByBrotli } from "../../browser/brotli-server.ts";
import { buildPage } from "../build-page.ts";
import { newPhone, withBuiltApp } from "../built-app.ts";
import { type Measured, rounded, type Table } from "../part.ts";
import { longestOf, longOf, workOf } from "../tasks.ts";
import { median } from "../times.ts";
import { figuresOf } from "./figures.ts";
import { type Start, startOf } from "./start.ts";

export const title = "First screen";

export const SLOWNESS = 4;
const STARTS = 5;

/** @param phone the same for all; without it each start has a new one */
async function starts(
  browser: Browser,
  url: string,
  slowness = SLOWNESS,
  phone?: BrowserContext,
): Promise<Start[]> {
  const all: Start[] = [];
  for (let n = 0; n < STARTS; n += 1) all.push(await startOf(browser, url, slowness, phone));
  return all;
}

/** Further starts of one phone after its first, its server gone. */
async function laterStarts(browser: Browser, folder: string): Promise<Start[]> {
  const server = await serveByBrotli(folder);
  const context = await newPhone(browser);
  const page = await context.newPage();
  await page.goto(server.url);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.waitForLoadState("networkidle");
  await page.close();
  server.close();
  const later = await starts(browser, server.url, SLOWNESS, context);
  await context.close();
  return later;
}

const HEAD = [
  "page",
  "until it can be touched, ms",
  "requests",
  "script, kB",
  "all, kB",
  "requests in the end",
  "all in the end, kB",
  "main thread, ms",
  "longest task, ms",
  "tasks over 50 ms",
  "slowest tap, ms",
];

const kB = (bytes: number) => rounded(bytes / 1000, 1);
const most = (values: readonly number[]) => Math.max(0, ...values);

function row(name: string, all: readonly Start[]) {
  const half = (of: (start: Start) => number) => median(all.map(of));
  const shown = (of: (start: Start) => number) => rounded(half(of), 0);
  return [
    name,
    shown(({ usableMs }) => usableMs),
    shown(({ requests }) => requests),
    kB(half(({ scriptBytes }) => scriptBytes)),
    kB(half(({ bytes }) => bytes)),
    shown(({ allRequests }) => allRequests),
    kB(half(({ allBytes }) => allBytes)),
    shown(({ tasks }) => workOf(tasks)),
    shown(({ tasks }) => longestOf(tasks)),
    shown(({ tasks }) => longOf(tasks)),
    shown(({ tapsMs }) => most(tapsMs)),
  ];
}

const table = (rows: Table["rows"]): Table => ({
  caption: `The processor ${SLOWNESS} times slower (but in the last row, which other work on the machine disturbs least), served with Brotli from this machine; medians of ${STARTS} starts (sizes of later starts are those in the phone's cache). Tasks are in processor time of the main thread. Taps go on from the moment there is something to touch; 0 is a tap answered within a frame.`,
  head: HEAD,
  rows,
});

export function measure(): Promise<Measured> {
  return withBuiltApp(async ({ folder, browser, server }) => {
    const bareFolder = join(folder, "bare");
    await buildPage(new URL("./bare/", import.meta.url), bareFolder);
    const bare = await starts(browser, `${server.url}bare/`);
    const own = await starts(browser, server.url);
    const later = await laterStarts(browser, folder);
    const unslowed = await starts(browser, server.url, 1);
    return {
      tables: [
        table([
          row("a bare page", bare),
          row("Live", own),
          row("Live, later starts, no server", later),
          row("Live, not slowed down", unslowed),
        ]),
      ],
      figures: figuresOf(own),
    };
  });
}
