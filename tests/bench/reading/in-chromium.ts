/** The reader's times in Chromium, on a slow processor. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serveByBrotli } from "../../browser/brotli-server.ts";
import { launchChromium } from "../../browser/chromium.ts";
import { buildPage } from "../build-page.ts";
import { slowDown } from "../built-app.ts";
import { rounded, type Table } from "../part.ts";
import { TIMER, tasksOf } from "../tasks.ts";
import { spread } from "../times.ts";

const SLOWNESS = 4;

export async function inChromium(lines: Readonly<Record<string, readonly string[]>>) {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    await buildPage(new URL("./page/", import.meta.url), folder);
    const server = await serveByBrotli(folder);
    const browser = await launchChromium();
    try {
      const page = await browser.newPage();
      await page.goto(server.url);
      await page.waitForFunction(() => "readerPage" in window);
      await slowDown(page, SLOWNESS);
      const first = await page.evaluate(() => window.readerPage.first("carp two pounds eight"));
      const rows: (string | number)[][] = [];
      for (const [name, some] of Object.entries(lines)) {
        const readAll = () => page.evaluate((all) => window.readerPage.each(all), some);
        // The first time only makes the code quick.
        await readAll();
        const { lengthsMs } = await tasksOf(browser, page, readAll, TIMER);
        const { median, p95, p99 } = spread(lengthsMs);
        rows.push([name, some.length, ...[median, p95, p99].map((ms) => rounded(ms))]);
      }
      return tableOf(first, rows);
    } finally {
      await browser.close();
      server.close();
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const tableOf = (first: { ready: number; phrase: number }, rows: Table["rows"]): Table => ({
  caption: `Milliseconds of processor a line in Chromium, ${SLOWNESS} times slower, each read once after all were read before. By the wall, the language made ready at once: ${rounded(first.ready, 0)} ms (the app does it in small pieces beforehand); the first phrase then: ${rounded(first.phrase, 0)} ms.`,
  head: ["lines", "count", "median", "p95", "p99"],
  rows,
});
