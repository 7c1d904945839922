/**
 * The browser is killed while a large log of version 1 is brought up to date, and started again: the
 * log is then of the old version or the new one, whole, and the app opens it. Where the browser finds
 * it damaged and throws it away, the app has it from the copy.
 */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import { SCHEMA_VERSION } from "../../../src/log/idb-schema.ts";
import { LOG_NAME } from "../../../src/log/log-name.ts";
import { randomOf } from "../../simulation/random.ts";
import { DoomedBrowser } from "../kill/doomed-browser.ts";
import { Reports } from "../kill/reports.ts";
import { tearJournal } from "../kill/torn-journal.ts";
import { pageScript } from "../page-script.ts";
import { LETS_NAMES_BE } from "../sent-as-text.ts";
import { largeLog } from "./large-log.ts";
import { checkLog, type LogAsIs, logAsIs } from "./log-as-is.ts";
import { installUpgradeWatch, type Upgrading } from "./upgrade-watch.ts";

export interface UpgradeOptions {
  /** Where the built app is served, with a slash at the end. */
  url: string;
  seed: number;
  kills: number;
  /** How many events there are in the log. */
  events: number;
}

export interface UpgradeReport {
  kills: number;
  /** How many kills fell after the beginning of the upgrade and before the page was told of its end. */
  within: number;
  /** Of those, after how many the log was of the version before, and after how many it was thrown away. */
  before: number;
  thrownAway: number;
  /** How long one takes that nobody disturbs, in milliseconds. */
  wholeMs: number;
  faults: readonly string[];
}

/** Longer than a busy machine takes to bring the log up to date. */
const LIMIT_MS = 60_000;
/** The latest kill, in parts of an upgrade: one that is over by then is killed at its end. */
const LATEST = 1.25;
/** After how many kills within the upgrade a write is left cut off, which by itself it seldom is. */
const TORN = 0.3;
/** A session that is in every log of version 1, and what the app shows of it. */
const SESSION = "saturday";
const WEIGHT = "3 lb";

interface Setting extends UpgradeOptions {
  reports: Reports<Upgrading>;
  /** A profile that has the log of version 1 in it, to be copied. */
  original: string;
  /** What was put into that log. */
  right: readonly LogEvent[];
  faults: Set<string>;
}

export async function killUpgrades(options: UpgradeOptions): Promise<UpgradeReport> {
  const random = randomOf(options.seed);
  const original = mkdtempSync(join(tmpdir(), "pegscribe-profile-"));
  const reports = await Reports.open<Upgrading>();
  const right = largeLog(options.events);
  const setting: Setting = { ...options, reports, original, right, faults: new Set() };
  try {
    await makeLog(setting);
    const { tookMs: wholeMs } = await onCopy(setting, (profile) => upgraded(setting, profile));
    const logs: (LogAsIs | undefined)[] = [];
    for (let n = 0; n < options.kills; n += 1) {
      const afterMs = random.between(0, LATEST * wholeMs);
      const isTorn = random.happens(TORN);
      await onCopy(setting, async (profile) => {
        const { isWithin } = await upgraded(setting, profile, afterMs);
        const isGone = isWithin && isTorn && (await tear(setting, profile));
        const log = await look(setting, profile, `killed after ${Math.round(afterMs)} ms`, isGone);
        if (isWithin) logs.push(log);
      });
    }
    const before = logs.filter((log) => log && log.version < SCHEMA_VERSION).length;
    const thrownAway = logs.filter((log) => !log).length;
    const { kills } = options;
    return { kills, wholeMs, within: logs.length, before, thrownAway, faults: [...setting.faults] };
  } finally {
    await reports.close();
    rmSync(original, { recursive: true, force: true });
  }
}

/** Leaves a browser behind that has the log of version 1, with one of its sessions open. */
async function makeLog({ url, original, events }: Setting): Promise<void> {
  const browser = await DoomedBrowser.start(original);
  try {
    const script = await pageScript(
      fileURLToPath(new URL("large-log.ts", import.meta.url)),
      "largeLog",
    );
    await browser.page.goto(`${url}icon.svg`);
    await browser.page.evaluate(
      `${script};\nlargeLog.makeLarge(${JSON.stringify(LOG_NAME)}, ${events})`,
    );
    await browser.page.evaluate((id) => {
      localStorage.setItem("pegscribe.guide", "seen");
      localStorage.setItem("pegscribe.session", id);
    }, SESSION);
    await browser.quit();
  } finally {
    browser.kill();
    await browser.gone();
  }
}

async function onCopy<T>({ original }: Setting, work: (profile: string) => Promise<T>): Promise<T> {
  const profile = mkdtempSync(join(tmpdir(), "pegscribe-profile-"));
  try {
    cpSync(original, profile, { recursive: true, verbatimSymlinks: true });
    return await work(profile);
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
}

/**
 * Opens the app on a log of version 1, and kills the browser.
 * @param afterMs milliseconds from the beginning of the upgrade to the kill; else it comes to its end
 * @returns whether the kill fell within the upgrade, and how long that took as far as it came
 */
async function upgraded(
  { url, reports }: Setting,
  profile: string,
  afterMs?: number,
): Promise<{ isWithin: boolean; tookMs: number }> {
  const browser = await DoomedBrowser.start(profile);
  let [begun, done]: (number | undefined)[] = [];
  let isKilled = false;
  const kill = () => {
    isKilled = true;
    browser.kill();
  };
  reports.hear = (what) => {
    if (what === "done") done = performance.now();
    if (what === "begun") {
      begun = performance.now();
      if (afterMs !== undefined) setTimeout(kill, afterMs);
    }
  };
  try {
    const devTools = await browser.page.context().newCDPSession(browser.page);
    // The page may talk to nobody, but for the trial's sake.
    await devTools.send("Page.setBypassCSP", { enabled: true });
    await browser.page.addInitScript(LETS_NAMES_BE);
    await browser.page.addInitScript(installUpgradeWatch, reports.address);
    await browser.page.goto(url, { waitUntil: "commit" });
    const until = performance.now() + LIMIT_MS;
    while (!isKilled && done === undefined) {
      if (performance.now() > until) throw new Error("The log is not brought up to date.");
      await new Promise((wait) => setTimeout(wait, 5));
    }
  } catch (cause) {
    if (!isKilled) throw cause;
  } finally {
    kill();
    await Promise.all([browser.gone(), reports.silence()]);
  }
  if (begun === undefined) throw new Error("The log was not brought up to date.");
  return { isWithin: done === undefined, tookMs: (done ?? performance.now()) - begun };
}

/**
 * Leaves a write cut off, and has the browser write on behind it.
 * @returns whether the kill had left one by itself, and the browser has thrown the log away
 */
async function tear({ url }: Setting, profile: string): Promise<boolean> {
  tearJournal(profile);
  const browser = await DoomedBrowser.start(profile);
  try {
    await browser.page.goto(`${url}icon.svg`);
    await browser.page.evaluate(
      () =>
        new Promise((done) => {
          indexedDB.open("another").onsuccess = done;
        }),
    );
    return browser.hasThrownAway;
  } finally {
    browser.kill();
    await browser.gone();
  }
}

/**
 * Looks at what is left, past the app and then with it.
 * @param isGone whether the browser has thrown the log away already
 * @returns the log as it was left; undefined if the browser has thrown it away
 */
async function look(
  setting: Setting,
  profile: string,
  when: string,
  isGone: boolean,
): Promise<LogAsIs | undefined> {
  const { url, right, faults } = setting;
  const browser = await DoomedBrowser.start(profile);
  try {
    const { page } = browser;
    await page.addInitScript(LETS_NAMES_BE);
    await page.goto(`${url}icon.svg`);
    const left = await logAsIs(page);
    if (!left && !isGone && !browser.hasThrownAway) faults.add(`${when}: there is no log`);
    for (const words of left ? checkLog(left, right) : []) faults.add(`${when}: ${words}`);
    await page.goto(url);
    if (!(await shows(page))) faults.add(`${when}: the app does not show ${WEIGHT}`);
    const opened = await logAsIs(page);
    if (opened?.version !== SCHEMA_VERSION) faults.add(`${when}: still version ${opened?.version}`);
    for (const words of opened ? checkLog(opened, right) : [])
      faults.add(`${when}, then opened: ${words}`);
    return left;
  } finally {
    browser.kill();
    await browser.gone();
  }
}

const shows = (page: Page): Promise<boolean> =>
  page
    .getByLabel("Weight and count")
    .getByText(WEIGHT, { exact: true })
    .waitFor({ timeout: LIMIT_MS })
    .then(
      () => true,
      () => false,
    );
