/** Storage trouble at length: each trouble by itself, then all of them as they come. */
import type { Browser } from "playwright-core";
import { launchChromium } from "../../browser/chromium.ts";
import type { Line, Trial } from "../trial.ts";
import { tryTrouble } from "./storage.ts";
import { weather } from "./storm.ts";
import { TROUBLES } from "./troubles.ts";

const PROMISE = "Storage trouble is said and survived";
const STORMS = 5;
const ENTRIES = 80;

export const run: Trial = async ({ url, seed }) => {
  const browser = await launchChromium();
  try {
    const lines: Line[] = [];
    for (const trouble of TROUBLES) {
      const faults = await tryTrouble(browser, url, trouble);
      lines.push({ promise: PROMISE, tried: trouble.name, cases: 1, faults });
    }
    return [...lines, await storms(browser, url, seed)];
  } finally {
    await browser.close();
  }
};

async function storms(browser: Browser, url: string, seed: number): Promise<Line> {
  const faults: string[] = [];
  let changes = 0;
  for (let n = 0; n < STORMS; n += 1) {
    // Far apart, so that neighbouring seeds of the whole trial share no session.
    const storm = await weather(browser, url, { entries: ENTRIES, seed: 1000 * seed + n });
    faults.push(...storm.faults);
    changes += storm.changes;
  }
  return {
    promise: PROMISE,
    tried: "sessions in which troubles come and go at random",
    cases: STORMS,
    faults,
    figures: `${STORMS * ENTRIES} entries, ${changes} changes`,
  };
}
