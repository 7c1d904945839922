/**
 * Draws the icons of `public/` from their drawings there; run by hand with tsx when one changes.
 * `icon.svg` is a peg tag with a float on it. `icon-maskable.svg` has a ground without edges, and its
 * float keeps to the middle four fifths, so that a system may cut any shape out of it.
 * Source: W3C, "Web Application Manifest", icon masks and safe zone.
 */
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { launchChromium } from "../browser/chromium.ts";

async function draw(browser: Browser, name: string, size: number): Promise<void> {
  const drawing = readFileSync(`public/${name}.svg`, "utf8");
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${drawing}`);
  await page.screenshot({ path: `public/${name}-${size}.png`, omitBackground: true });
  await page.close();
}

const browser = await launchChromium();
for (const name of ["icon", "icon-maskable"]) {
  for (const size of [192, 512]) await draw(browser, name, size);
}
await browser.close();
