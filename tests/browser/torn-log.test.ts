import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { DoomedBrowser } from "../trials/kill/doomed-browser.ts";
import { tearJournal } from "../trials/kill/torn-journal.ts";
import { storedEvents } from "../trials/stored.ts";
import { type AppServer, startAppServer } from "./app-server.ts";

const LIMIT = { timeout: 180_000 };
/** As long as the copy may take on a machine that is busy. */
const COPIED_MS = 1500;

let server: AppServer;
let profile: string;

beforeAll(async () => {
  server = await startAppServer();
});
afterAll(() => server?.close());
beforeEach(() => {
  profile = mkdtempSync(join(tmpdir(), "pegscribe-profile-"));
});
afterEach(() => rmSync(profile, { recursive: true, force: true }));

/** Starts the browser on the profile, does something in the app, and kills it. */
async function live<T>(work: (page: Page) => Promise<T>): Promise<T> {
  const browser = await DoomedBrowser.start(profile);
  try {
    await browser.page.addInitScript(() => localStorage.setItem("pegscribe.guide", "seen"));
    await browser.page.goto(server.url);
    await browser.page.getByRole("button", { name: "Start listening" }).waitFor();
    return await work(browser.page);
  } finally {
    browser.kill();
    await browser.gone();
  }
}

const say = (phrase: string) => async (page: Page) => {
  const field = page.getByLabel("Type a phrase");
  await field.fill(phrase);
  await field.press("Enter");
  await page.getByLabel("Last heard").getByText(`“${phrase}”`).waitFor();
  await page.waitForTimeout(COPIED_MS);
};

const forgetCopy = (page: Page) =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    await root.removeEntry("log-copy", { recursive: true });
  });

const weights = async (page: Page): Promise<string[]> => {
  await page.waitForTimeout(COPIED_MS);
  const events = await storedEvents(page);
  expect(new Set(events.map(({ device }) => device)).size).toBe(1);
  expect(new Set(events.map(({ session }) => session)).size).toBe(1);
  const own = events.sort((a, b) => a.seq - b.seq);
  expect(own.map(({ seq }) => seq)).toEqual(own.map((_, place) => place + 1));
  return own.flatMap(({ heard }) => heard?.text ?? []);
};

test("a log that the browser threw away as damaged is there again", LIMIT, async () => {
  await live(say("carp two pounds"));
  await live(say("carp three pounds"));
  tearJournal(profile);
  await live(say("carp four pounds"));
  const said = ["carp two pounds", "carp three pounds", "carp four pounds"];
  expect(await live(weights)).toEqual(said);
  await live(say("carp five pounds"));
  expect(await live(weights)).toEqual([...said, "carp five pounds"]);
});

test("also one of which there was no copy at first", LIMIT, async () => {
  await live(say("carp two pounds"));
  await live(forgetCopy);
  await live((page) => page.waitForTimeout(2 * COPIED_MS));
  tearJournal(profile);
  await live(say("carp four pounds"));
  expect(await live(weights)).toEqual(["carp two pounds", "carp four pounds"]);
});

test("a session that was deleted does not come back with it", LIMIT, async () => {
  await live(say("carp two pounds"));
  await live(say("all out"));
  await live(async (page) => {
    await page.evaluate(() => {
      location.hash = "sessions";
    });
    await page
      .getByRole("button", { name: /^Delete/ })
      .first()
      .click();
    await page.waitForTimeout(COPIED_MS);
  });
  expect(await live(storedEvents)).toEqual([]);
});
