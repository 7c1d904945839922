import { launchChromium } from "../../browser/chromium.ts";
import type { Line, Trial } from "../trial.ts";
import { tryTrouble } from "./storage.ts";
import { TROUBLES } from "./troubles.ts";

export const run: Trial = async ({ url }) => {
  const browser = await launchChromium();
  try {
    const lines: Line[] = [];
    for (const trouble of TROUBLES) {
      const faults = await tryTrouble(browser, url, trouble);
      const promise = "Storage trouble is said and survived";
      lines.push({ promise, tried: trouble.name, cases: 1, faults });
    }
    return lines;
  } finally {
    await browser.close();
  }
};
