/** From the end of a phrase to its tone: read, judged, stored strictly, folded, confirmed. */
import type { Browser } from "playwright-core";
import { Bench } from "../../browser/bench.ts";
import { newPhone, withBuiltApp } from "../built-app.ts";
import { type Measured, rounded, type Table } from "../part.ts";
import { type LogSize, seedLog } from "../seeded-log.ts";
import { spread, type Timed } from "../times.ts";
import { installConfirm } from "./probe.ts";

export const title = "From the end of a phrase to confirmed";

const PHRASES = [
  "F1 two pounds eight",
  "carp four pounds",
  "three small roach",
  "hook pulled",
  "rig's in",
  "fed twice",
  "skimmer ten ounces",
  "depth half a metre",
];
const SAID = 80;
/** The first ones are not counted: code is still being got ready. */
const BEFORE = 16;
const OPEN = "the-open-session";

/** Days of 500 events each, and a new session open. */
const EARLIER: readonly LogSize[] = [
  { sessions: 0, events: 0 },
  { sessions: 2, events: 500 },
  { sessions: 20, events: 500 },
  { sessions: 200, events: 500 },
];
/** All of it in the session that is open. */
const IN_HAND: readonly LogSize[] = [1000, 10_000].map((events) => ({
  ...{ sessions: 1, events, only: OPEN },
}));

async function phoneWith(browser: Browser, url: string, size: LogSize): Promise<Bench> {
  const bench = await Bench.open(browser, { url, context: await newPhone(browser) });
  const { page } = bench;
  await seedLog(page, size);
  await page.evaluate((id) => localStorage.setItem("pegscribe.session", id), OPEN);
  await page.addInitScript(installConfirm);
  await page.reload();
  await bench.listen();
  await page.evaluate(settled);
  return bench;
}

async function confirmedIn({ page }: Bench, phrase: string): Promise<number> {
  await page.waitForFunction(() => window.scripted.isListening());
  const ms = await page.evaluate((said) => window.confirmed(said), phrase);
  // What the screen has to do after it is not to fall on the next phone's phrase.
  await page.waitForTimeout(40);
  return ms;
}

/** Each phrase on each phone in turn, so that what else the machine does falls on all alike. */
async function timed(phones: readonly Bench[]): Promise<Timed[]> {
  const all = phones.map(() => [] as number[]);
  for (let n = 0; n < SAID + BEFORE; n += 1)
    for (const [place, phone] of phones.entries())
      all[place]?.push(await confirmedIn(phone, PHRASES[n % PHRASES.length] as string));
  return all.map((ms) => spread(ms.slice(BEFORE)));
}

/** Once what is done at the start, such as digests of earlier days, no longer keeps the page busy. */
async function settled(): Promise<void> {
  let quiet = 0;
  while (quiet < 20) {
    const before = performance.now();
    await new Promise((done) => setTimeout(done, 50));
    quiet = performance.now() - before < 70 ? quiet + 1 : 0;
  }
}

export function measure(): Promise<Measured> {
  return withBuiltApp(async ({ browser, server }) => {
    const sizes = [...EARLIER, ...IN_HAND];
    const phones: Bench[] = [];
    for (const size of sizes) phones.push(await phoneWith(browser, server.url, size));
    const times = await timed(phones);
    const nameOf = ({ sessions, events, only }: LogSize) =>
      `${sessions * events} ${only ? "in the open session" : "in earlier sessions of 500"}`;
    const table: Table = {
      caption: `In Chromium, the whole app; ${SAID} phrases each, on all phones in turn; milliseconds by the wall:`,
      head: ["events in the log", "median", "p95", "median, of that with none"],
      rows: sizes.map((size, place) => {
        const { median, p95 } = times[place] as Timed;
        const ofNone = median / (times[0] as Timed).median;
        return [nameOf(size), rounded(median, 1), rounded(p95, 1), rounded(ofNone)];
      }),
    };
    return { tables: [table], figures: {} };
  });
}
