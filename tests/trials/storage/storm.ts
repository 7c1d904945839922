/**
 * One session through troubles that come and go at random: in the end every entry is stored once,
 * in the order in which it was said.
 */
import type { Browser, BrowserContext, Page } from "playwright-core";
import { LOG_NAME } from "../../../src/log/log-name.ts";
import { comparePlaces } from "../../../src/log/order.ts";
import { noticeWords } from "../../../src/words/notices.ts";
import { tallyWords } from "../../../src/words/tally.ts";
import { Bench } from "../../browser/bench.ts";
import { type Random, randomOf } from "../../simulation/random.ts";
import { besideApp } from "../beside-app.ts";
import { phrases } from "../kill/phrases.ts";
import { storedEvents } from "../stored.ts";
import { installFaults, type PageFault } from "./faults-page.ts";
import { holdAll } from "./other-tab.ts";

/** Of so many entries one brings another trouble, or the end of one. */
const CHANGE = 0.25;
const FAULTS = [undefined, undefined, "refused", "cut", "aborted", "held"] as const;

type Fault = PageFault | "held";

export interface StormReport {
  changes: number;
  faults: string[];
}

/** @param url where the app is served */
export async function weather(
  browser: Browser,
  url: string,
  { entries, seed }: { entries: number; seed: number },
): Promise<StormReport> {
  const { context, beside } = await besideApp(browser, url);
  await context.addInitScript(installFaults, undefined);
  const bench = await Bench.open(browser, { url, context });
  const random = randomOf(seed);
  const said = phrases(entries, random).map(({ text }) => text);
  const storm = new Storm(beside, bench.page, random);
  try {
    for (const text of said) {
      if (random.happens(CHANGE)) await storm.change();
      await bench.type(text);
    }
    await storm.end();
    const faults = await aftermath(bench, context, said);
    return { changes: storm.changes, faults };
  } finally {
    await bench.close();
  }
}

class Storm {
  changes = 0;
  readonly #beside: Page;
  readonly #app: Page;
  readonly #random: Random;
  #now: Fault | undefined;

  constructor(beside: Page, app: Page, random: Random) {
    this.#beside = beside;
    this.#app = app;
    this.#random = random;
  }

  change(): Promise<void> {
    this.changes += 1;
    return this.#turn(this.#random.pick(FAULTS));
  }

  end(): Promise<void> {
    return this.#turn(undefined);
  }

  async #turn(next: Fault | undefined): Promise<void> {
    if (this.#now === "held") await this.#beside.evaluate(() => window.held.release());
    this.#now = next;
    await this.#app.evaluate(
      (fault) => {
        window.fault = fault;
      },
      next === "held" ? undefined : next,
    );
    if (next === "held") await this.#beside.evaluate(holdAll, LOG_NAME);
  }
}

async function aftermath(bench: Bench, context: BrowserContext, said: readonly string[]) {
  const faults: string[] = [];
  const { page } = bench;
  const notice = page.getByRole("region", { name: noticeWords.storing.label });
  // The longest that the app waits before it tries again.
  await notice.waitFor({ state: "detached", timeout: 90_000 }).catch(() => {
    faults.push("it still warned when all was well");
  });
  const other = await context.newPage();
  await other.goto(new URL("icon.svg", page.url()).href);
  const stored = (await storedEvents(other)).sort(comparePlaces);
  // Some phrases are two events, of one group.
  const texts = stored
    .map(({ heard }) => heard?.text)
    .filter((text, place, all) => text !== all[place - 1]);
  if (String(texts) !== String(said)) {
    const lost = said.filter((text) => !texts.includes(text));
    faults.push(`${texts.length} of ${said.length} in another order; lost: ${lost.join(", ")}`);
  }
  await page.reload();
  const fish = tallyWords.fish(said.length);
  const tally = bench.part(tallyWords.weightAndCount).getByText(fish, { exact: true });
  await tally.waitFor().catch(() => faults.push(`a reload does not show ${fish}`));
  return faults;
}
