import type { Browser, BrowserContext, Page } from "playwright-core";
import { LETS_NAMES_BE } from "./sent-as-text.ts";

/**
 * A phone on which the app keeps nothing of itself, with a page of the app's own place on the web,
 * but without the app.
 * @param url where the app is served
 */
export async function besideApp(
  browser: Browser,
  url: string,
): Promise<{ context: BrowserContext; beside: Page }> {
  const context = await browser.newContext({ serviceWorkers: "block" });
  await context.addInitScript(LETS_NAMES_BE);
  const beside = await context.newPage();
  await beside.goto(`${url}icon.svg`);
  return { context, beside };
}
