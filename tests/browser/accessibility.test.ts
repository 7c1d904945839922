import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ROUTES } from "../../src/screens/routes.ts";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const SCREENS = ROUTES.filter(({ place }) => place !== "link");

let browser: Browser;
let server: AppServer;

beforeAll(async () => {
  browser = await launchChromium();
  server = await startAppServer();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** What axe finds on the page as it stands, one line each. */
async function findings({ page }: Bench): Promise<string[]> {
  // Evaluated, not added as a script: the page's policy lets no strange script in.
  await page.evaluate(AXE);
  const { violations } = await page.evaluate<AxeResults>("axe.run()");
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

describe.each(["light", "dark"] as const)("in %s colours axe finds nothing", (colorScheme) => {
  test("before a session", async () => {
    const bench = await Bench.open(browser, { url: server.url });
    await bench.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    for (const { name: screen } of SCREENS) {
      await bench.go(screen);
      expect([screen, ...(await findings(bench))]).toEqual([screen]);
    }
    await bench.close();
  });

  test("in the middle of one", async () => {
    const bench = await Bench.open(browser, { url: server.url });
    await bench.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await bench.listen();
    await bench.say("rig two, depth half a metre, on red maggot", "F1 two pounds");
    await bench.say("roach forty", "that was a lovely fish", "feeding", "scratch that");
    for (const { name: screen } of SCREENS) {
      await bench.go(screen);
      if (screen === "Review") {
        await bench.page.getByRole("button", { name: "Correct it" }).click();
      }
      expect([screen, ...(await findings(bench))]).toEqual([screen]);
    }
    await bench.close();
  });
});
