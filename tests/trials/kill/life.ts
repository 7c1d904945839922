/** One life of the browser: it starts, what is stored is looked at, phrases are said, it is killed. */
import type { Page } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import { DEFAULT_SETTINGS } from "../../../src/scribe/settings.ts";
import { MOTIFS } from "../../../src/speech/tones.ts";
import { installSpeech } from "../../browser/scripted-speech.ts";
import { LETS_NAMES_BE } from "../sent-as-text.ts";
import { storedEvents } from "../stored.ts";
import type { Account } from "./account.ts";
import { DoomedBrowser } from "./doomed-browser.ts";
import { beginAnother, checkOpen } from "./open-session.ts";
import { CONFIDENCE, type Phrase } from "./phrases.ts";
import type { Life } from "./plan.ts";
import type { Reports } from "./reports.ts";
import { installStream, type Report } from "./stream-page.ts";
import { tearJournal } from "./torn-journal.ts";

/** Longer than the app may take to confirm a phrase on a machine that is busy. */
const CONFIRM_LIMIT_MS = 20_000;

/** Longer than an empty log takes to be filled from its copy. */
const FILLED_LIMIT_MS = 5000;

/** Longer than it takes from an answer of the disk to the tone, and that to be told of. */
const FROZEN_MS = 300;

export interface Setting {
  url: string;
  profile: string;
  account: Account;
  reports: Reports<Report>;
}

/**
 * Says the phrases until the browser is killed at the moment drawn.
 * @returns how many were said
 */
export async function live(
  setting: Setting,
  phrases: readonly Phrase[],
  { moment, gapsMs, isAnother, isTorn }: Life,
): Promise<number> {
  const { account, reports } = setting;
  const browser = await DoomedBrowser.start(setting.profile);
  const counted = { said: 0, told: 0 };
  let isKilled = false;
  const kill = () => {
    isKilled = true;
    browser.kill();
  };
  reports.hear = () => {};
  if (moment.when === "loading") setTimeout(kill, moment.ms);
  try {
    await open(browser.page, setting);
    if (isAnother) await beginAnother(browser.page, account);
    await listen(browser.page);
    // From here on: a tone of before was for no phrase.
    reports.hear = (report) => {
      const phrase = phrases[counted[report]];
      counted[report] += 1;
      if (phrase && report === "said") account.says(phrase);
      if (phrase && report === "told") account.confirmed.push(phrase);
      if (!("phrase" in moment) || moment.phrase !== counted[report]) return;
      if (moment.when === "told" && report === "told") kill();
      if (moment.when === "said" && report === "said") setTimeout(kill, moment.ms);
      if (moment.when === "frozen" && report === "said") {
        setTimeout(() => browser.freeze(), moment.ms);
        setTimeout(kill, moment.ms + FROZEN_MS);
      }
    };
    if (moment.when === "time") setTimeout(kill, moment.ms);
    const texts = phrases.map(({ text }) => text);
    await browser.page.evaluate(([texts, gaps, sure]) => window.stream.say(texts, gaps, sure), [
      texts,
      gapsMs,
      CONFIDENCE,
    ] as const);
    const until = Date.now() + CONFIRM_LIMIT_MS;
    while (!isKilled && counted.told < phrases.length && Date.now() < until) await pause(5);
    if (!isKilled && counted.told < phrases.length) {
      account.faults.add(`never confirmed: ${phrases[counted.told]?.text}`);
    }
  } catch (cause) {
    if (!isKilled) throw cause;
  } finally {
    kill();
    await Promise.all([browser.gone(), reports.silence()]);
    if (browser.hasThrownAway) account.thrownAway += 1;
    if (isTorn) tearJournal(setting.profile);
  }
  return counted.said;
}

/** A life that ends well, the last one; what it finds is what was stored. */
export async function liveInPeace(setting: Setting): Promise<void> {
  const browser = await DoomedBrowser.start(setting.profile);
  try {
    await open(browser.page, setting);
    await browser.quit();
  } finally {
    browser.kill();
    await browser.gone();
  }
}

/** Opens the app, and holds what is stored and shown against what was said. */
async function open(page: Page, { url, account, reports }: Setting): Promise<void> {
  const devTools = await page.context().newCDPSession(page);
  // The page may talk to nobody, but for the trial's sake.
  await devTools.send("Page.setBypassCSP", { enabled: true });
  await page.addInitScript(LETS_NAMES_BE);
  await page.addInitScript(installSpeech, true);
  const motif = MOTIFS.logged.map(({ hz }) => hz);
  await page.addInitScript(installStream, { motif, address: reports.address });
  await page.addInitScript(
    (settings) => {
      localStorage.setItem("pegscribe.guide", "seen");
      localStorage.setItem("pegscribe.settings", settings);
    },
    JSON.stringify({ ...DEFAULT_SETTINGS, talkback: "tones" }),
  );
  await page.goto(url, { waitUntil: "commit" });
  await page.getByRole("button", { name: "Start listening" }).waitFor();
  const events = await filledEvents(page, account);
  account.check(events);
  const last = account.lastEntry(events);
  if (last) await checkOpen(page, account, last);
}

/** What is stored, once it is there again where the browser threw it away. */
async function filledEvents(page: Page, { confirmed }: Account): Promise<LogEvent[]> {
  const until = Date.now() + FILLED_LIMIT_MS;
  for (;;) {
    const events = await storedEvents(page);
    if (events.length > 0 || confirmed.length === 0 || Date.now() > until) return events;
    await pause(20);
  }
}

async function listen(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Start listening" }).click();
  await page.waitForFunction(() => window.stream.isReady() && window.scripted.isListening());
}

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
