import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { type AppServer, startAppServer } from "./app-server.ts";
import { launchChromium } from "./chromium.ts";

/**
 * A browser and the app as built, served, which a file's tests share: there within tests only.
 * @param base the folder it stands in on the server, such as `/somewhere/deep/`
 */
export function appInBrowser(base = "/"): { readonly browser: Browser; readonly url: string } {
  let browser: Browser | undefined;
  let server: AppServer | undefined;
  const there = <T>(one: T | undefined): T => {
    if (!one) throw new Error("The browser and the app are there within tests only.");
    return one;
  };
  beforeAll(async () => {
    browser = await launchChromium();
    server = await startAppServer(base);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });
  return {
    get browser() {
      return there(browser);
    },
    get url() {
      return there(server).url;
    },
  };
}
