/** Two tabs never write a number twice, whatever order their steps fall in. */
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { createServer, type ViteDevServer } from "vite";
import { launchChromium } from "../../browser/chromium.ts";
import type { Written } from "./tab-page.ts";

const STEPS = 12;

/** @param cases how many logs, each written by two tabs at once */
export async function tryTabs(
  cases: number,
  seed: number,
): Promise<{ events: number; faults: string[] }> {
  const faults: string[] = [];
  let events = 0;
  await withTabs(async (one, other) => {
    for (let n = 0; n < cases; n += 1) {
      const database = `case ${n}`;
      // Far apart, so that neighbouring seeds of the whole trial share no case.
      const base = 100_003 * seed + 2 * n;
      const written = await Promise.all([
        work(one, database, base),
        work(other, database, base + 1),
      ]);
      const stored = await one.evaluate((name) => window.tabPage.stored(name), database);
      events += stored.length;
      faults.push(...faultsOf(stored, written).map((words) => `${database}: ${words}`));
    }
  });
  return { events, faults };
}

const work = (page: Page, database: string, seed: number): Promise<Written> =>
  page.evaluate(([name, seed, steps]) => window.tabPage.work(name, seed, steps), [
    database,
    seed,
    STEPS,
  ] as const);

type Numbered = Written["confirmed"][number];

function faultsOf(stored: readonly Numbered[], written: readonly Written[]): string[] {
  // One that loses its connection twice is told so, and has to be tried again.
  const faults = written.flatMap(({ failed }) => failed).filter((reason) => reason !== "closed");
  const numbers = stored.map(({ seq }) => seq).sort((a, b) => a - b);
  if (numbers.some((number, place) => number !== place + 1)) {
    faults.push(`numbers ${numbers.join(" ")}`);
  }
  const devices = new Set(stored.map(({ device }) => device)).size;
  if (devices > 1) faults.push(`one phone has ${devices} names`);
  const byId = new Map(stored.map((one) => [one.id, one]));
  const isAsTold = ({ id, seq }: Numbered) => byId.get(id)?.seq === seq;
  const confirmed = written.flatMap((one) => one.confirmed);
  if (!confirmed.every(isAsTold)) faults.push("an event is not stored as it was confirmed");
  if (new Set(confirmed.map(({ id }) => id)).size !== stored.length) {
    faults.push("something is stored that was never confirmed");
  }
  return faults;
}

async function withTabs(trial: (one: Page, other: Page) => Promise<void>): Promise<void> {
  const server = await createServer({
    root: fileURLToPath(new URL("../../..", import.meta.url)),
    configFile: false,
    logLevel: "error",
    cacheDir: "node_modules/.vite-tab-page",
    server: { host: "127.0.0.1", port: 0, hmr: false },
    // Found at the start, not on the way: finding one later loads the page anew.
    optimizeDeps: { entries: ["tests/trials/tabs/tab-page.ts"] },
  });
  let browser: Browser | undefined;
  try {
    await server.listen();
    browser = await launchChromium();
    const context = await browser.newContext();
    const open = async () => openTab(await context.newPage(), server);
    await trial(await open(), await open());
  } finally {
    await browser?.close();
    await server.close();
  }
}

async function openTab(page: Page, server: ViteDevServer): Promise<Page> {
  await page.goto(`${server.resolvedUrls?.local[0]}tests/trials/tabs/tab-page.html`);
  await page.waitForFunction(() => "tabPage" in window);
  return page;
}
