import { describe, expect, test } from "vitest";
import { ROUTES } from "../../src/screens/routes.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { findings } from "./axe-findings.ts";
import { Bench } from "./bench.ts";

const SCREENS = ROUTES.filter(({ place }) => place !== "link");

const app = appInBrowser();

describe.each(["light", "dark"] as const)("in %s colours axe finds nothing", (colorScheme) => {
  test("before a session", async () => {
    const bench = await Bench.open(app.browser, { url: app.url });
    await bench.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    for (const { name: screen } of SCREENS) {
      await bench.go(screen);
      expect([screen, ...(await findings(bench))]).toEqual([screen]);
    }
    await bench.close();
  });

  test("in the middle of one", async () => {
    const bench = await Bench.open(app.browser, { url: app.url });
    await bench.page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await bench.listen();
    await bench.say("rig two, depth half a metre, on red maggot", "F1 two pounds");
    await bench.say("roach forty", "that was a lovely fish", "feeding", "scratch that");
    for (const { name: screen } of SCREENS) {
      await bench.go(screen);
      if (screen === "Review") {
        await bench.page.getByRole("button", { name: /F1, 2 pounds/i }).click();
      }
      expect([screen, ...(await findings(bench))]).toEqual([screen]);
    }
    await bench.close();
  });
});
