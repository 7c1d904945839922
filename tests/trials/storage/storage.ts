/**
 * Storage trouble is said and survived: while it lasts entries are kept in memory, shown, warned of,
 * corrected and exported; when it is over they are stored, once, with nobody touching anything.
 */
import { isDeepStrictEqual } from "node:util";
import type { Browser, Download } from "playwright-core";
import type { LogEvent } from "../../../src/log/event.ts";
import type { LogDocument } from "../../../src/log/transfer.ts";
import { MOTIFS } from "../../../src/speech/tones.ts";
import { liveWords } from "../../../src/words/live.ts";
import { noticeWords } from "../../../src/words/notices.ts";
import { Bench } from "../../browser/bench.ts";
import { besideApp } from "../beside-app.ts";
import { storedEvents } from "../stored.ts";
import { installFaults } from "./faults-page.ts";
import type { Scene, Trouble } from "./troubles.ts";

/** Retries double their wait; after a trouble of some seconds the next comes within this. */
const RECOVERY_MS = 30_000;

const BEFORE = "F1 two pounds";
const DURING = ["carp three pounds", "tench one pound", "make that two pounds"] as const;
const WEIGHT = { before: "2 lb", during: "7 lb", withoutBefore: "5 lb" } as const;

/**
 * Tries one trouble on the app as built.
 * @param url where the app is served
 * @returns what came out wrong, each in a sentence
 */
export async function tryTrouble(
  browser: Browser,
  url: string,
  trouble: Trouble,
): Promise<string[]> {
  const scene: Scene = await besideApp(browser, url);
  const { context } = scene;
  await context.addInitScript(installFaults, undefined);
  await trouble.prepare?.(scene);
  if (trouble.hasLog) {
    const earlier = await Bench.open(browser, { url, context });
    await earlier.type(BEFORE);
    await earlier.page.close();
  }
  if (trouble.isFromTheStart) await trouble.begin(scene);
  const bench = await Bench.open(browser, { url, context });
  scene.app = bench.page;
  try {
    return await tell(bench, scene, trouble);
  } finally {
    await bench.close();
  }
}

async function tell(bench: Bench, scene: Scene, trouble: Trouble): Promise<string[]> {
  const faults: string[] = [];
  const check = (isSo: boolean, words: string) => {
    if (!isSo) faults.push(`${trouble.name}: ${words}`);
  };
  const before = trouble.isFromTheStart && !trouble.hasLog ? [] : [BEFORE];
  await bench.listen();
  if (!trouble.isFromTheStart) {
    await bench.say(BEFORE);
    await trouble.begin(scene);
  }
  const notes = await logged(bench);
  await bench.say(DURING[0]);
  const spoken = await bench.spoken();
  check(spoken?.endsWith(`Not stored yet. ${trouble.advice}`) ?? false, `it said “${spoken}”`);
  await bench.say(DURING[1]);
  await bench.spoken();
  await bench.type(DURING[2]);
  check((await logged(bench)) === notes, "it confirmed by tone what was not stored");

  const notice = bench.page.getByRole("region", { name: noticeWords.storing.label });
  const shown = (await notice.textContent()) ?? "";
  check(shown.includes(noticeWords.storing.unsaved(3)), `it showed “${shown}”`);
  check(shown.includes(trouble.advice), `it gave no advice but “${shown}”`);
  const weight = trouble.isFromTheStart ? WEIGHT.withoutBefore : WEIGHT.during;
  check(await weighs(bench, weight), `it did not show ${weight}`);

  const log = await exported(bench);
  const texts = textsOf(log.events);
  check(DURING.every(isIn(texts)), `the export had only “${texts.join(", ")}”`);
  check(
    log.incomplete !== undefined || before.every(isIn(texts)),
    "the export left out what was stored and did not say so",
  );

  await bench.go("Live");
  await trouble.end(scene);
  await notice.waitFor({ state: "detached", timeout: RECOVERY_MS }).catch(() => {
    faults.push(`${trouble.name}: it still warned when all was well`);
  });
  const waiting = bench.page.getByText(liveWords.last.waiting);
  check((await waiting.count()) === 0, "it still said that the last entry waits to be stored");
  const stored = await storedEvents(bench.page);
  const all = [...before, ...DURING];
  check(String(textsOf(stored)) === String(all), `it stored “${textsOf(stored).join(", ")}”`);
  const inTheEnd = before.length === 0 ? WEIGHT.withoutBefore : WEIGHT.during;
  check(await weighs(bench, inTheEnd), "it did not show what could not be read at first");
  check(log.events.every(isOneOf(stored)), "it stored something else than it had exported");
  await bench.page.reload();
  if (!trouble.isFromTheStart) check(await weighs(bench, inTheEnd), "a reload lost something");
  return faults;
}

const isIn = (texts: readonly string[]) => (text: string) => texts.includes(text);

/** Down to numbers and times. */
const isOneOf = (events: readonly LogEvent[]) => (event: LogEvent) =>
  events.some((one) => isDeepStrictEqual(one, event));

/** What was heard, in the order of the log. */
const textsOf = (events: readonly LogEvent[]): string[] =>
  [...events].sort((a, b) => a.at - b.at || a.seq - b.seq).map(({ heard }) => heard?.text ?? "");

/** How often "logged" sounded. */
async function logged(bench: Bench): Promise<number> {
  const motif = MOTIFS.logged.map(({ hz }) => hz).join();
  const notes = await bench.page.evaluate(() => window.notes);
  return notes.filter((_, at) => notes.slice(at, at + MOTIFS.logged.length).join() === motif)
    .length;
}

async function weighs(bench: Bench, weight: string): Promise<boolean> {
  const numeral = bench.part("Weight and count").getByText(weight, { exact: true });
  return numeral.waitFor().then(
    () => true,
    () => false,
  );
}

async function exported(bench: Bench): Promise<LogDocument> {
  await bench.go("Summary");
  await bench.page.getByRole("link", { name: "Keep, move or take in the whole log" }).click();
  const download = bench.page.waitForEvent("download");
  await bench.page.getByRole("button", { name: "Save the log as a file" }).click();
  return JSON.parse(await contentOf(await download));
}

async function contentOf(download: Download): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return Buffer.concat(chunks).toString();
}
