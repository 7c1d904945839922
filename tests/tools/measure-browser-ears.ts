/**
 * Measures the ears inside the app in Chromium, through microphone, worklet, worker, reader, scribe
 * and store: what is heard right, from the end of speech to text, and the work in silence.
 * `npm run measure:browser-ears -- [PHRASES]` speaks so many phrases with Debian's `flite`; without
 * it, the recordings of the test are spoken.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { seededRandom } from "../../grammar/jsgf/sample.ts";
import { PHRASES } from "../../grammar/phrases/index.ts";
import { createReader } from "../../grammar/read.ts";
import { SOUND_RATE_HZ } from "../../src/speech/offline/suppressor.ts";
import { startAppServer } from "../browser/app-server.ts";
import { buildInto } from "../browser/build-app.ts";
import { launchChromium } from "../browser/chromium.ts";
import {
  joined,
  microphoneArgs,
  SESSION,
  saidInASession,
  silence,
  spoken,
  writeWav,
} from "../browser/recording.ts";
import { installProbe, METER_BLOCK, type Probe } from "./browser-ears-probe.ts";
import { speak, VOICES } from "./scene.ts";

const USUAL_PHRASES = 80;
/** Below this a sample counts for quiet. */
const QUIET_LEVEL = 0.01;
/** A room, or a microphone's own noise: root mean square. */
const HISS_LEVEL = 2e-3;
const IDLE_SECONDS = 60;
/** So long a quiet, and all has been said. */
const PAUSE_MS = 15_000;
const LOOK_AHEAD = 2;
/**
 * What is or may be answered aloud: for an answer the microphone is closed, and the browser then
 * plays the recording from its beginning.
 */
const ANSWERED = /^(ask|note|session|talkback|nudge|no-nudge|withdraw|correct)/;

interface Said {
  phrase: string;
  sound: Float32Array;
}

/** Phrases' own examples, in turn by each voice. */
function withFlite(count: number): Said[] {
  const kinds = PHRASES.filter(({ id }) => !ANSWERED.test(id));
  const phrases = kinds.flatMap(({ examples }) => Object.keys(examples));
  const random = seededRandom(1);
  return Array.from({ length: count }, (_, index) => {
    const phrase = phrases[Math.floor(random() * phrases.length)] as string;
    return { phrase, sound: speak(phrase, VOICES[index % VOICES.length] as "rms") };
  });
}

function hasFlite(): boolean {
  try {
    execFileSync("flite", ["-lv"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

function hiss(seconds: number): Float32Array {
  const random = seededRandom(2);
  const peak = HISS_LEVEL * Math.sqrt(3);
  return silence(seconds).map(() => peak * (2 * random() - 1));
}

/** Seconds of processor time that the page's process and all processes have used. */
async function processorTime(browser: Browser): Promise<{ page: number; all: number }> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  await session.detach();
  const sum = (part: typeof processInfo) => part.reduce((time, { cpuTime }) => time + cpuTime, 0);
  return {
    page: sum(processInfo.filter(({ type }) => type === "renderer")),
    all: sum(processInfo),
  };
}

async function idle(page: Page, what: string): Promise<void> {
  const browser = page.context().browser() as Browser;
  const before = await processorTime(browser);
  await page.waitForTimeout(1000 * IDLE_SECONDS);
  const after = await processorTime(browser);
  const share = (kind: "page" | "all") =>
    `${((100 * (after[kind] - before[kind])) / IDLE_SECONDS).toFixed(1)} %`;
  console.log(`${what}: ${share("page")} of a core in the page, ${share("all")} in all processes`);
}

const at = (share: number, values: readonly number[]): string => {
  const sorted = [...values].sort((a, b) => a - b);
  return String(Math.round(sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN));
};
const spread = (values: readonly number[]) =>
  `median ${at(0.5, values)} ms, p95 ${at(0.95, values)} ms (${values.length})`;

/** Of phrases in the order they were said, those that were heard so, in the same order. */
function heardRight(said: readonly string[], heard: readonly string[]): boolean[] {
  let next = 0;
  return said.map((one) => {
    const found = heard.indexOf(one, next);
    // What comes much later is the same phrase said again.
    const isRight = found >= 0 && found - next <= LOOK_AHEAD;
    if (isRight) next = found + 1;
    return isRight;
  });
}

function report(all: readonly Said[], { opened, sounds, heard, shown }: Probe): void {
  if (opened > 1) console.log(`The microphone was opened ${opened} times: nothing below holds.`);
  const reader = createReader();
  const states = (text: string) => JSON.stringify(reader.read([text]).statements);
  const right = heardRight(
    all.map(({ phrase }) => states(phrase)),
    heard.map(({ text }) => states(text)),
  );
  console.log(`heard right: ${right.filter(Boolean).length} of ${all.length}`);
  for (const [index, { phrase }] of all.entries())
    if (!right[index]) console.log(`  not: ${phrase}`);
  const meterMs = (2000 * METER_BLOCK) / SOUND_RATE_HZ;
  const latencies = heard.flatMap(({ at, endedAt }) => {
    const speech = sounds.findLast(({ from }) => from < endedAt);
    return speech ? [at - speech.to + meterMs] : [];
  });
  console.log(`end of speech to text: ${spread(latencies)}`);
  const stored = heard.flatMap((one) => {
    const next = shown.find(({ at, text }) => at >= one.at && text === one.text);
    return next ? [next.at - one.at] : [];
  });
  console.log(`text to stored and shown: ${spread(stored)}`);
}

const count = Number(process.argv[2] ?? USUAL_PHRASES);
const all = hasFlite()
  ? withFlite(count)
  : SESSION.map((phrase) => ({ phrase, sound: saidInASession(phrase) }));
const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
try {
  const session = spoken(all.map(({ sound }) => sound));
  const path = join(folder, "session.wav");
  writeWav(path, joined([session, hiss(IDLE_SECONDS + 25), silence(IDLE_SECONDS + 30)]));
  buildInto(join(folder, "app"));
  const server = await startAppServer("/", join(folder, "app"));
  const browser = await launchChromium({ args: microphoneArgs(path) });
  const page = await browser.newPage();
  await page.addInitScript(installProbe, [METER_BLOCK, QUIET_LEVEL] as const);
  const settings = JSON.stringify({
    ...{ weight: "lb-oz", length: "cm", talkback: "tones", ears: "offline" },
  });
  await page.addInitScript((kept) => localStorage.setItem("pegscribe.settings", kept), settings);
  await page.goto(`${server.url}#set-up`);
  await page.getByRole("button", { name: "Get ready" }).click();
  await page.getByText("Ready: this phone hears without a signal.").waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await server.close();
  await page.goto(`${server.url}#live`);
  await page.getByRole("button", { name: "Start listening" }).click();
  // A busy machine plays the recording more slowly.
  await page.waitForFunction(
    (pauseMs) => Date.now() - (window.probe.sounds.at(-1)?.to ?? Date.now()) > pauseMs,
    PAUSE_MS,
    { timeout: (4000 * session.length) / SOUND_RATE_HZ },
  );
  report(all, await page.evaluate(() => window.probe));
  await page.evaluate(() => window.probe.endMeter());
  await page.waitForTimeout(3000);
  await idle(page, `listening to a hiss of ${HISS_LEVEL}`);
  await page.waitForTimeout(10_000);
  await idle(page, "listening to silence");
  await page.getByRole("button", { name: "Stop listening" }).click();
  await idle(page, "not listening");
  await browser.close();
} finally {
  rmSync(folder, { recursive: true });
}
