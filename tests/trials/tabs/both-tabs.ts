/** The app in two tabs, written into at once: both show the same fish, each with a number of its own. */
import type { Browser, Page } from "playwright-core";
import { Bench } from "../../browser/bench.ts";
import { randomOf } from "../../simulation/random.ts";
import { phrases } from "../kill/phrases.ts";
import { LETS_NAMES_BE } from "../sent-as-text.ts";
import { storedEvents } from "../stored.ts";

const FOLLOW_MS = 10_000;
const POLL_MS = 100;

/**
 * @param url where the app is served
 * @param entries how many fish in each tab
 * @returns what came out wrong, each in a sentence
 */
export async function typeInBoth(
  browser: Browser,
  url: string,
  { entries, seed }: { entries: number; seed: number },
): Promise<string[]> {
  const context = await browser.newContext({ serviceWorkers: "block" });
  await context.addInitScript(LETS_NAMES_BE);
  const one = await Bench.open(browser, { url, context });
  const other = await Bench.open(browser, { url, context });
  const texts = phrases(2 * entries, randomOf(seed)).map(({ text }) => text);
  try {
    await Promise.all([one.type(...texts.slice(0, entries)), other.type(...texts.slice(entries))]);
    return await compare(one, other, texts);
  } finally {
    await one.close();
  }
}

async function compare(one: Bench, other: Bench, texts: readonly string[]): Promise<string[]> {
  const faults: string[] = [];
  const stored = await storedEvents(one.page);
  const seqs = stored.map(({ seq }) => seq).sort((a, b) => a - b);
  if (seqs.some((seq, place) => seq !== place + 1)) faults.push(`stored as ${seqs.join(" ")}`);
  const heard = new Set(stored.map((event) => event.heard?.text));
  if (!texts.every((text) => heard.has(text))) faults.push("not everything is stored");
  await one.go("Review");
  await other.go("Review");
  const wanted = texts.map((_, place) => place + 1).join(" ");
  const until = Date.now() + FOLLOW_MS;
  let shown = await Promise.all([rowsOf(one.page), rowsOf(other.page)]);
  while ((shown[0].numbers !== wanted || shown[0].all !== shown[1].all) && Date.now() < until) {
    await new Promise((done) => setTimeout(done, POLL_MS));
    shown = await Promise.all([rowsOf(one.page), rowsOf(other.page)]);
  }
  if (shown[0].all !== shown[1].all) faults.push("the tabs do not show the same");
  if (shown[0].numbers !== wanted) faults.push(`the fish are numbered ${shown[0].numbers}`);
  return faults;
}

/** What Review lists, and the numbers of the fish in order. */
async function rowsOf(page: Page): Promise<{ all: string; numbers: string }> {
  const all = await page.locator(".entry").allTextContents();
  const numbers = await page.locator(".entry-number").allTextContents();
  return {
    all: all.join("\n"),
    numbers: numbers
      .map((text) => Number(/\d+/.exec(text)?.[0]))
      .sort((a, b) => a - b)
      .join(" "),
  };
}
