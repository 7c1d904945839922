/** The app as built, and a browser to open it in. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, CDPSession, Page } from "playwright-core";
import { type BrotliServer, serveByBrotli } from "../browser/brotli-server.ts";
import { buildInto } from "../browser/build-app.ts";
import { launchChromium } from "../browser/chromium.ts";

export interface BuiltApp {
  folder: string;
  browser: Browser;
  server: BrotliServer;
}

/** Without it a headless browser lets no tone out, and holds the clocks of a page back. */
const ARGS = ["--autoplay-policy=no-user-gesture-required", "--enable-precise-memory-info"];

/** Builds the app anew, since what is measured is what would be shipped now. */
export async function withBuiltApp<T>(run: (app: BuiltApp) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    buildInto(folder);
    const server = await serveByBrotli(folder);
    const browser = await launchChromium({ args: ARGS });
    try {
      return await run({ folder, browser, server });
    } finally {
      await browser.close();
      server.close();
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A phone that the app was opened on before, with nothing in its log. */
export async function newPhone(browser: Browser): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  // The runner of these scripts names functions by a helper, which those sent to a page ask for too.
  await context.addInitScript({ content: "globalThis.__name ??= (named) => named;" });
  await context.addInitScript(() => localStorage.setItem("pegscribe.guide", "seen"));
  return context;
}

/** As slow as a cheap phone: so many times slower than this machine. */
export async function slowDown(page: Page, times: number): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: times });
  return session;
}
