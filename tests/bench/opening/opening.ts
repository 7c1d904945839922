/** Opening a long session, and a season of many. */
import type { Browser, Page } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import { foldSession } from "../../../src/log/fold.ts";
import { Bench } from "../../browser/bench.ts";
import { newPhone, withBuiltApp } from "../built-app.ts";
import { type Measured, rounded, type Table } from "../part.ts";
import { seedLog } from "../seeded-log.ts";
import { longestOf, longOf, type Tasks, tasksOf } from "../tasks.ts";
import { median, timeOf } from "../times.ts";
import { type Shown, type Touch, timeToShow } from "./shown.ts";

export const title = "Opening";

const LONG_SESSION = 2000;
const SEASON = { sessions: 300, events: 500 };
/** Times are medians of so many. */
const ROUNDS = 5;

const HEAD = ["", "ms until shown", "longest task, ms of processor", "tasks over 50 ms"];

const ms = (value: number) => rounded(value, 0);

/** Every way to a long session; each is gone once before, so that the screens' scripts are there. */
const WAYS: Readonly<Record<string, Touch>> = {
  "its Summary, from the list: what it came to": {
    ...{ press: "button.button-open", shows: '[aria-label="In all"]', words: "fish" },
    last: { shows: ".goes-out", words: "fish" },
  },
  "from there Live": { hash: "live", shows: '[aria-label="Weight and count"]', words: "fish" },
  "from there Review": { hash: "review", shows: "#all-entries" },
};

async function longSession(browser: Browser, url: string): Promise<Table["rows"]> {
  const bench = await Bench.open(browser, { url, context: await newPhone(browser) });
  const { page } = bench;
  await seedLog(page, { sessions: 1, events: LONG_SESSION, only: "long" });
  await page.reload();
  const events = await page.evaluate(storedEvents);
  await page.waitForTimeout(2000);
  const all = Object.keys(WAYS).map(() => [] as Timed[]);
  for (let round = 0; round <= ROUNDS; round += 1) {
    await page.evaluate(() => {
      location.hash = "sessions";
    });
    await page.locator("button.button-open").first().waitFor();
    for (const [place, touch] of Object.values(WAYS).entries())
      all[place]?.push(await shownBy(browser, page, touch));
  }
  const folds = Array.from({ length: ROUNDS }, () => timeOf(() => foldSession("long", events)));
  await bench.close();
  const rows = Object.entries(WAYS).flatMap(([name, { last }], place) => {
    const counted = (all[place] ?? []).slice(1);
    const of = (what: (shown: Timed) => number) => ms(median(counted.map(what)));
    const tasks = [of(({ tasks }) => longestOf(tasks)), of(({ tasks }) => longOf(tasks))];
    const row = [name, of((one) => one.ms), ...tasks];
    return last ? [row, ["and all of it", of((one) => one.lastMs), "–", "–"]] : [row];
  });
  return [["its fold alone, in Node", ms(median(folds)), "–", "–"], ...rows];
}

interface Timed extends Shown {
  tasks: Tasks;
}

async function shownBy(browser: Browser, page: Page, touch: Touch): Promise<Timed> {
  let shown: Shown = { ms: Number.NaN, lastMs: Number.NaN };
  const tasks = await tasksOf(browser, page, async () => {
    shown = await timeToShow(page, touch);
  });
  return { ...shown, tasks };
}

/** Self-contained, since it is sent to the page as text. */
async function storedEvents(): Promise<LogEvent[]> {
  const finished = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const db = await finished(indexedDB.open("pegscribe"));
  const events = await finished(db.transaction("events").objectStore("events").getAll());
  db.close();
  return events;
}

async function season(browser: Browser, url: string): Promise<Table["rows"]> {
  const bench = await Bench.open(browser, { url, context: await newPhone(browser) });
  const { page } = bench;
  await seedLog(page, SEASON);
  await page.reload();
  const rows: (string | number)[][] = [];
  const timed = async (name: string, touch: Touch) => {
    const { ms: time, tasks } = await shownBy(browser, page, touch);
    rows.push([name, ms(time), ms(longestOf(tasks)), longOf(tasks)]);
  };
  const list = { shows: "#session-list", words: `${SEASON.sessions} sessions` };
  await timed("all digests made, with progress, and the list", { hash: "sessions", ...list });
  await page.reload();
  await page.locator("#session-list").waitFor();
  await page.waitForTimeout(2000);
  await page.evaluate(() => {
    location.hash = "live";
  });
  await page.waitForTimeout(500);
  await timed("the list, from digests", { hash: "sessions", ...list });
  const sums = page.getByRole("region", { name: "What they say together" });
  await sums.getByRole("img").first().waitFor();
  await timed("sums over all by rig, in the worker", {
    press: ".choices .choice:nth-of-type(1) input",
    shows: 'svg[aria-label^="Fish an hour by rig"]',
  });
  await page.evaluate(collectGarbage);
  const heap = await page.evaluate(
    () => (performance as unknown as { memory: { usedJSHeapSize: number } }).memory.usedJSHeapSize,
  );
  rows.push(["heap of the page with it, MiB", rounded(heap / 2 ** 20, 1), "–", "–"]);
  await bench.close();
  return rows;
}

/** A moment for the browser to do it by itself. */
const collectGarbage = () => new Promise((done) => setTimeout(done, 3000));

export function measure(): Promise<Measured> {
  return withBuiltApp(async ({ browser, server }) => ({
    tables: [
      {
        caption: `A session of ${LONG_SESSION} events, milliseconds by the wall until it is shown; medians of ${ROUNDS}, gone once before:`,
        head: HEAD,
        rows: await longSession(browser, server.url),
      },
      {
        caption: `${SEASON.sessions} sessions of ${SEASON.events} events, each once:`,
        head: HEAD,
        rows: await season(browser, server.url),
      },
    ],
    figures: {},
  }));
}
