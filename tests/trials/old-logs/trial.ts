import { launchChromium } from "../../browser/chromium.ts";
import type { Trial } from "../trial.ts";
import { missingVersions, OLD_LOGS, tryOldLog } from "./old-logs.ts";

export const run: Trial = async ({ url }) => {
  const browser = await launchChromium();
  try {
    const faults = missingVersions().map((version) => `no log of version ${version} is kept`);
    for (const log of OLD_LOGS) faults.push(...(await tryOldLog(browser, url, log)));
    const tried = "a log of every earlier version";
    return [{ promise: "Old logs open", tried, cases: OLD_LOGS.length, faults }];
  } finally {
    await browser.close();
  }
};
