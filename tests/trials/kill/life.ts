/** One life of the browser: it starts, what is stored is looked at, phrases are said, it is killed. */
import type { Page } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import { DEFAULT_SETTINGS } from "../../../src/scribe/settings.ts";
import { MOTIFS } from "../../../src/speech/tones.ts";
import { installSpeech } from "../../browser/scripted-speech.ts";
import { storedEvents } from "../stored.ts";
import type { Account } from "./account.ts";
import { DoomedBrowser } from "./doomed-browser.ts";
import { CONFIDENCE, type Phrase } from "./phrases.ts";
import type { Life } from "./plan.ts";
import { installStream, REPORT, type Report } from "./stream-page.ts";

/** Longer than the app may take to confirm a phrase on a machine that is busy. */
const CONFIRM_LIMIT_MS = 20_000;

/** Longer than it takes from an answer of the disk to the tone, and that to be told of. */
const FROZEN_MS = 300;

export interface Setting {
  url: string;
  profile: string;
  account: Account;
}

/**
 * Says the phrases until the browser is killed at the moment drawn.
 * @returns how many were said
 */
export async function live(
  { url, profile, account }: Setting,
  phrases: readonly Phrase[],
  { moment, gapsMs }: Life,
): Promise<number> {
  const browser = await DoomedBrowser.start(profile);
  const counted = { said: 0, told: 0 };
  let isKilled = false;
  const kill = () => {
    isKilled = true;
    browser.kill();
  };
  await follow(browser.page, (report) => {
    const phrase = phrases[counted[report]];
    counted[report] += 1;
    if (phrase) account[report === "said" ? "said" : "confirmed"].push(phrase);
    if (!("phrase" in moment) || moment.phrase !== counted[report]) return;
    if (moment.when === "told" && report === "told") kill();
    if (moment.when === "said" && report === "said") setTimeout(kill, moment.ms);
    if (moment.when === "frozen" && report === "said") {
      setTimeout(() => browser.freezeStorage(), moment.ms);
      setTimeout(kill, moment.ms + FROZEN_MS);
    }
  });
  if (moment.when === "loading") setTimeout(kill, moment.ms);
  try {
    account.check(await open(browser.page, url));
    await listen(browser.page);
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
    await browser.gone();
  }
  return counted.said;
}

/** A life that ends well, at the start or the end; what it finds is what was stored. */
export async function liveInPeace(
  { url, profile, account }: Setting,
  look: (page: Page) => Promise<void> = async () => {},
): Promise<void> {
  const browser = await DoomedBrowser.start(profile);
  try {
    account.check(await open(browser.page, url));
    await look(browser.page);
    await browser.quit();
  } finally {
    browser.kill();
    await browser.gone();
  }
}

/** Opens the app. @returns what is stored */
async function open(page: Page, url: string): Promise<LogEvent[]> {
  // What sends functions as text may have put names on them.
  await page.addInitScript("globalThis.__name ??= (named) => named");
  await page.addInitScript(installSpeech, true);
  await page.addInitScript(
    installStream,
    MOTIFS.logged.map(({ hz }) => hz),
  );
  await page.addInitScript(
    (settings) => {
      localStorage.setItem("pegscribe.guide", "seen");
      localStorage.setItem("pegscribe.settings", settings);
    },
    JSON.stringify({ ...DEFAULT_SETTINGS, talkback: "tones" }),
  );
  await page.goto(url, { waitUntil: "commit" });
  await page.getByRole("button", { name: "Start listening" }).waitFor();
  return storedEvents(page);
}

async function listen(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Start listening" }).click();
  await page.waitForFunction(() => window.stream.canSound() && window.scripted.isListening());
}

/** Hears of a report within a message of the browser's own, without waiting for any page. */
async function follow(page: Page, hear: (report: Report) => void): Promise<void> {
  const devTools = await page.context().newCDPSession(page);
  await devTools.send("Runtime.enable");
  await devTools.send("Runtime.addBinding", { name: REPORT });
  devTools.on("Runtime.bindingCalled", ({ name, payload }) => {
    if (name === REPORT) hear(payload as Report);
  });
}

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
