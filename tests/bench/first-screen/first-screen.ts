/** The first screen at four times slower, beside a bare page; and a second start without a server. */
import { join } from "node:path";
import type { Browser } from "playwright-core";
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
const STARTS = 3;

async function starts(browser: Browser, url: string): Promise<Start[]> {
  const all: Start[] = [];
  for (let n = 0; n < STARTS; n += 1) all.push(await startOf(browser, url, SLOWNESS));
  return all;
}

/** The second of two starts of one phone, its server gone. */
async function secondStart(browser: Browser, folder: string): Promise<Start> {
  const server = await serveByBrotli(folder);
  const context = await newPhone(browser);
  const page = await context.newPage();
  await page.goto(server.url);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.waitForLoadState("networkidle");
  await page.close();
  server.close();
  const start = await startOf(browser, server.url, SLOWNESS, context);
  await context.close();
  return start;
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
  caption: `The processor ${SLOWNESS} times slower, served with Brotli from this machine; medians of ${STARTS} starts (one of the second start, whose sizes are those in the phone's cache). Tasks are in processor time of the main thread. Taps go on from the moment there is something to touch; 0 is a tap answered within a frame.`,
  head: HEAD,
  rows,
});

export function measure(): Promise<Measured> {
  return withBuiltApp(async ({ folder, browser, server }) => {
    const bareFolder = join(folder, "bare");
    await buildPage(new URL("./bare/", import.meta.url), bareFolder);
    const bare = await starts(browser, `${server.url}bare/`);
    const own = await starts(browser, server.url);
    const second = await secondStart(browser, folder);
    return {
      tables: [
        table([
          row("a bare page", bare),
          row("Live", own),
          row("Live, second start, no server", [second]),
        ]),
      ],
      figures: figuresOf(own),
    };
  });
}
