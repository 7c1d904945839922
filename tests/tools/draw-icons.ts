/**
 * Draws the icons of `public/` from `icon.svg`; run by hand with tsx when the drawing changes.
 * Its ground fills the square and the float keeps to the middle, so that a system may cut any
 * shape out of it.
 */
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { launchChromium } from "../browser/chromium.ts";

const drawing = readFileSync("public/icon.svg", "utf8");

async function draw(browser: Browser, path: string, size: number): Promise<void> {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${drawing}`);
  await page.screenshot({ path });
  await page.close();
}

const browser = await launchChromium();
await draw(browser, "public/icon-192.png", 192);
await draw(browser, "public/icon-512.png", 512);
await browser.close();
