/**
 * How long the board's screen takes for a frame in Chromium, at this machine's pace and four times
 * slower: `npm run bench:board-screen`.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, CDPSession } from "playwright-core";
import { build } from "vite";
import { startAppServer } from "../../browser/app-server.ts";
import { launchChromium } from "../../browser/chromium.ts";
import { type Row, table } from "../../simulation/table.ts";
import { spread } from "../times.ts";
import type { BoardPage } from "./screen/page.tsx";

declare global {
  interface Window {
    board: BoardPage;
  }
}

const ROWS = [100, 500, 1000, 4000];
const SLOWER = [1, 4];
const UPDATES = 60;
const SCROLLS = 30;
/** A frame of a screen that is drawn sixty times a second. */
const FRAME_MS = 16;
const SCREENS = { phone: { width: 390, height: 844 }, wide: { width: 1280, height: 800 } };

async function buildPage(folder: string): Promise<void> {
  await build({
    root: fileURLToPath(new URL("./screen", import.meta.url)),
    configFile: false,
    logLevel: "error",
    base: "./",
    build: { outDir: folder, emptyOutDir: true, target: "es2022" },
  });
}

type Name = keyof typeof SCREENS;

/** Milliseconds of one frame: by the wall, and of the page's own processor time. */
interface Frame {
  wall: number;
  work: number;
}

/** Milliseconds of processor that the page's main thread has taken so far. */
async function workOf(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
}

async function frames(session: CDPSession, count: number, act: () => Promise<number>) {
  const all: Frame[] = [];
  for (let n = 0; n < count; n += 1) {
    const before = await workOf(session);
    const wall = await act();
    all.push({ wall, work: (await workOf(session)) - before });
  }
  return all;
}

async function measured(browser: Browser, url: string, name: Name, rows: number, slower: number) {
  const page = await browser.newPage({ viewport: SCREENS[name] });
  await page.goto(url);
  await page.waitForFunction(() => "board" in window);
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await page.evaluate(([n, s]) => window.board.prepare(n, s), [rows, 2 * UPDATES] as const);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  const step = () => page.evaluate(() => window.board.step());
  const opened = await frames(session, 1, () => page.evaluate(() => window.board.open()));
  const empty = await frames(session, SCROLLS, () => page.evaluate(() => window.board.empty()));
  const byPeg = await frames(session, UPDATES, step);
  const scrolled = await frames(session, SCROLLS, () => page.evaluate(() => window.board.scroll()));
  const ordered = await frames(session, 1, () => page.evaluate(() => window.board.order("Weight")));
  const byWeight = await frames(session, UPDATES, step);
  await page.close();
  return { empty, opened, byPeg, scrolled, ordered, byWeight };
}

const ms = (value: number): string => value.toFixed(1);

function timesOf(all: readonly Frame[]): string[] {
  const work = spread(all.map((frame) => frame.work));
  const inTime = all.filter((frame) => frame.work < FRAME_MS).length;
  const wall = spread(all.map((frame) => frame.wall));
  return [
    ms(work.median),
    ...(all.length > 1 ? [ms(work.p95), `${inTime} of ${all.length}`] : []),
    ms(wall.median),
  ];
}

const HEAD: Row = [
  "screen, rows, times slower",
  "empty frame: work, middle",
  "update by peg: work, middle",
  "95 in 100",
  `under ${FRAME_MS} ms`,
  "wall, middle",
  "update by weight: work, middle",
  "95 in 100",
  `under ${FRAME_MS} ms`,
  "wall, middle",
  "a screenful on: work, middle",
  "95 in 100",
  `under ${FRAME_MS} ms`,
  "wall, middle",
  "first frame: work",
  "wall",
  "another order: work",
  "wall",
];

const load = () => (loadavg()[0] ?? Number.NaN).toFixed(1);

const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
const before = load();
await buildPage(folder);
const server = await startAppServer("/", folder);
const browser = await launchChromium();
console.log(
  `npm run bench:board-screen; Node ${process.version}, Chromium ${browser.version()}, ${cpus().length} × ${cpus()[0]?.model}, ${new Date().toISOString().slice(0, 10)}; milliseconds\n`,
);
try {
  const rows: Row[] = [];
  for (const name of Object.keys(SCREENS) as Name[])
    for (const count of ROWS)
      for (const slower of SLOWER) {
        const one = await measured(browser, server.url, name, count, slower);
        const { empty, byPeg, byWeight, scrolled, opened, ordered } = one;
        rows.push([
          `${name}, ${count}, ${slower}`,
          ms(spread(empty.map(({ work }) => work)).median),
          ...[byPeg, byWeight, scrolled, opened, ordered].flatMap(timesOf),
        ]);
      }
  console.log(table(HEAD, rows));
  console.log(`\nLoad of the machine ${before} before, ${load()} after.`);
} finally {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true });
}
