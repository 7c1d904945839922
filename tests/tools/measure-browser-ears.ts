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
  LEAD_SECONDS,
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

/** Where the first and the last sound of a recording are, in samples. */
function bounds(sound: Float32Array): [from: number, to: number] {
  const isLoud = (sample: number) => Math.abs(sample) > QUIET_LEVEL;
  return [sound.findIndex(isLoud), sound.findLastIndex(isLoud)];
}

/** Milliseconds into the whole recording at which each phrase ends. */
function endsMs(all: readonly Said[]): number[] {
  const gap = spoken([new Float32Array(0)]).length - LEAD_SECONDS * SOUND_RATE_HZ;
  let at = LEAD_SECONDS * SOUND_RATE_HZ;
  return all.map(({ sound }) => {
    const end = at + bounds(sound)[1];
    at += sound.length + gap;
    return (1000 * end) / SOUND_RATE_HZ;
  });
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

function report(all: readonly Said[], probe: Probe): void {
  const { opened, firstSoundAt = 0, heard, shown } = probe;
  if (opened > 1) console.log(`The microphone was opened ${opened} times: nothing below holds.`);
  const reader = createReader();
  const states = (text = "") => JSON.stringify(reader.read([text]).statements);
  const [onset] = bounds(all[0]?.sound ?? silence(0));
  const meterMs = (2000 * METER_BLOCK) / SOUND_RATE_HZ;
  const startedAt = firstSoundAt - meterMs - 1000 * LEAD_SECONDS - (1000 * onset) / SOUND_RATE_HZ;
  const ends = endsMs(all).map((ms) => startedAt + ms);
  /** What was told between the end of this phrase and that of the next. */
  const answerTo = (index: number) =>
    heard.find(({ at }) => at > (ends[index] ?? 0) && at < (ends[index + 1] ?? Infinity));
  const answers = all.map((_, index) => answerTo(index));
  const right = all.filter(({ phrase }, index) => states(phrase) === states(answers[index]?.text));
  console.log(`heard right: ${right.length} of ${all.length}`);
  for (const [index, { phrase }] of all.entries())
    if (states(phrase) !== states(answers[index]?.text))
      console.log(`  "${phrase}": ${answers[index]?.text ?? "nothing"}`);
  const latencies = answers.flatMap((one, index) => (one ? [one.at - (ends[index] ?? 0)] : []));
  console.log(`end of speech to text: ${spread(latencies)}`);
  const stored = answers.flatMap((one) => {
    const next = one && shown.find(({ at, text }) => at >= one.at && text === one.text);
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
  writeWav(path, joined([session, hiss(IDLE_SECONDS + 10), silence(IDLE_SECONDS + 20)]));
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
  await page.waitForTimeout((1000 * session.length) / SOUND_RATE_HZ);
  report(all, await page.evaluate(() => window.probe));
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
