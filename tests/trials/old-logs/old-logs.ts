/** A log that any earlier version has left opens in the app of today, and goes on. */
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { SCHEMA_VERSION } from "../../../src/log/idb-schema.ts";
import { LOG_NAME } from "../../../src/log/log-name.ts";
import { Bench } from "../../browser/bench.ts";
import { V1_DEVICE, V1_EVENTS } from "../../browser/store-v1.ts";
import { besideApp } from "../beside-app.ts";
import { pageScript } from "../page-script.ts";
import { storedEvents } from "../stored.ts";

export interface OldLog {
  version: number;
  name: string;
  /** Makes it, as an expression for a page. */
  make: string;
}

const LOG = JSON.stringify(LOG_NAME);

/** Each version's way of keeping it; all hold the events of the first. */
export const OLD_LOGS: readonly OldLog[] = [
  { version: 1, name: "version 1", make: `makers.makeV1(${LOG})` },
  { version: 2, name: "version 2", make: `makers.makeV2(${LOG})` },
  { version: 3, name: "version 3 as it first was", make: `makers.makeV3(${LOG}, false)` },
  { version: 3, name: "version 3 as it was at last", make: `makers.makeV3(${LOG}, true)` },
];

/** Versions of which no log is kept; there should be none. */
export function missingVersions(): number[] {
  const earlier = Array.from({ length: SCHEMA_VERSION - 1 }, (_, n) => n + 1);
  return earlier.filter((version) => OLD_LOGS.every((log) => log.version !== version));
}

const SESSION = "saturday";
const NEW_PHRASE = "F1 two pounds";
const WEIGHT = { before: "3 lb", after: "5 lb" } as const;

/** @returns what came out wrong, each in a sentence */
export async function tryOldLog(browser: Browser, url: string, log: OldLog): Promise<string[]> {
  const { context, beside } = await besideApp(browser, url);
  await beside.evaluate(`${await makers()};\n${log.make}`);
  await beside.evaluate((id) => localStorage.setItem("pegscribe.session", id), SESSION);
  const bench = await Bench.open(browser, { url, context });
  try {
    const faults = bench.complaints;
    const look = async (weight: string) => {
      const numeral = bench.part("Weight and count").getByText(weight, { exact: true });
      await numeral.waitFor().catch(() => faults.push(`it does not show ${weight}`));
    };
    await look(WEIGHT.before);
    await bench.type(NEW_PHRASE);
    await look(WEIGHT.after);
    faults.push(...(await changed(bench.page)));
    return faults.map((words) => `${log.name}: ${words}`);
  } finally {
    await bench.close();
  }
}

/** Whether what was stored is as it was, and what is new comes behind it. */
async function changed(page: Page): Promise<string[]> {
  const stored = new Map((await storedEvents(page)).map((event) => [event.id, event]));
  const faults: string[] = [];
  for (const old of V1_EVENTS) {
    if (sorted(stored.get(old.id)) !== sorted(old)) faults.push(`${old.id} is not as it was`);
    stored.delete(old.id);
  }
  const next = [...stored.values()].map(({ device, seq }) => `${device} ${seq}`).join();
  if (next !== `${V1_DEVICE.id} ${V1_DEVICE.seq + 1}`) faults.push(`it went on as “${next}”`);
  return faults;
}

const sorted = (one: object | undefined) => JSON.stringify(Object.entries(one ?? {}).sort());

/** Runs in a page of the app's own place on the web, before the app is there. */
const makers = (): Promise<string> =>
  pageScript(fileURLToPath(new URL("makers.ts", import.meta.url)), "makers");
