/**
 * Takes the pictures of `public/screen-*.png` from the app itself, in the middle of its sample day;
 * run by hand with tsx when a screen has changed.
 */
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { launchChromium } from "../browser/chromium.ts";
import { withServedApp } from "../trials/served-app.ts";
import { SCREENSHOTS, type Screenshot } from "./build/screenshots.ts";

/** Of the sample day: enough was caught to be looked at, and it is not over. */
const PHRASES_HEARD = 60;
const NARROW_PIXEL_RATIO = 2;

/** Plays the sample day to its middle, and takes the pictures of one form. */
async function take(browser: Browser, url: string, shots: readonly Screenshot[]): Promise<void> {
  const [{ form, width, height }] = shots as [Screenshot];
  const ratio = form === "narrow" ? NARROW_PIXEL_RATIO : 1;
  const page = await browser.newPage({
    viewport: { width: width / ratio, height: height / ratio },
    deviceScaleFactor: ratio,
  });
  await page.addInitScript(() => localStorage.setItem("pegscribe.guide", "seen"));
  await page.goto(url);
  await page.getByRole("button", { name: "Play a sample session" }).click();
  await page.waitForFunction(
    (heard) => Number(/phrase (\d+) of/.exec(document.body.textContent ?? "")?.[1]) >= heard,
    PHRASES_HEARD,
    { timeout: 300_000 },
  );
  for (const { screen, file } of shots) {
    await page.evaluate((id) => location.assign(`#${id}`), screen);
    await page.locator("main h1").first().waitFor();
    await page.waitForTimeout(1000);
    await page.screenshot({ path: join("public", file) });
  }
  await page.close();
}

const browser = await launchChromium();
try {
  await withServedApp(async (url) => {
    for (const form of ["narrow", "wide"]) {
      await take(
        browser,
        url,
        SCREENSHOTS.filter((shot) => shot.form === form),
      );
    }
  });
} finally {
  await browser.close();
}
