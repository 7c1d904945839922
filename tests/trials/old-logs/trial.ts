import { launchChromium } from "../../browser/chromium.ts";
import type { Line, Trial } from "../trial.ts";
import { killUpgrades } from "./kill-upgrade.ts";
import { missingVersions, OLD_LOGS, tryOldLog } from "./old-logs.ts";

const PROMISE = "Old logs open";
/** As many as a season's phone has, so that the upgrade takes its time. */
const EVENTS = 20_000;
const KILLS = 20;

export const run: Trial = async ({ url, seed }) => [
  await everyVersion(url),
  await killedWithin(url, seed),
];

async function everyVersion(url: string): Promise<Line> {
  const browser = await launchChromium();
  try {
    const faults = missingVersions().map((version) => `no log of version ${version} is kept`);
    for (const log of OLD_LOGS) faults.push(...(await tryOldLog(browser, url, log)));
    const tried = "a log of every earlier version";
    return { promise: PROMISE, tried, cases: OLD_LOGS.length, faults };
  } finally {
    await browser.close();
  }
}

async function killedWithin(url: string, seed: number): Promise<Line> {
  const report = await killUpgrades({ url, seed, kills: KILLS, events: EVENTS });
  const { within, before, thrownAway, wholeMs, kills, faults } = report;
  return {
    promise: PROMISE,
    tried: `the browser killed while one of version 1 with ${EVENTS} events is brought up to date`,
    cases: kills,
    faults,
    figures: `${within} kills within the upgrade (${Math.round(wholeMs)} ms undisturbed), the others at its end; of those within, ${before} left the old version, ${within - before - thrownAway} the new one, and ${thrownAway} times the browser threw it away`,
  };
}
