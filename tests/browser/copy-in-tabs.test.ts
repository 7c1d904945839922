import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { storedEvents } from "../trials/stored.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser();
/** A machine that is busy takes its time. */
const LIMIT = { timeout: 10_000 };

declare global {
  interface Window {
    /** Has the files of the copy for itself, until it is told anything. */
    holder: Worker;
  }
}

/** In a worker, as only one can have a file for itself. */
const HOLDER = `(async () => {
  const root = await navigator.storage.getDirectory();
  const held = [];
  for await (const file of (await root.getDirectoryHandle("log-copy")).values())
    held.push(await file.createSyncAccessHandle());
  onmessage = () => held.forEach((file) => file.close());
  postMessage(held.length);
})()`;

const holdCopy = (page: Page): Promise<number> =>
  page.evaluate(
    (source) =>
      new Promise<number>((done) => {
        window.holder = new Worker(URL.createObjectURL(new Blob([source])));
        window.holder.onmessage = ({ data }) => done(data);
      }),
    HOLDER,
  );

const copyOf = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const texts: string[] = [];
    for await (const file of (await root.getDirectoryHandle("log-copy")).values())
      texts.push(await (await (file as FileSystemFileHandle).getFile()).text());
    return texts.join("\n");
  });

/** The app with one entry that is copied, and a page beside it. */
async function setUp() {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.type("carp two pounds");
  const beside = await bench.context.newPage();
  await beside.goto(`${app.url}icon.svg`);
  await expect.poll(() => copyOf(beside), LIMIT).toContain("carp two pounds");
  return { bench, beside };
}

const letGo = (page: Page) => page.evaluate(() => window.holder.postMessage("let go"));

test("what is said while another tab is writing to the copy is in it too", async () => {
  const { bench, beside } = await setUp();
  expect(await holdCopy(beside)).toBe(1);
  const typing = bench.type("carp three pounds");
  await expect.poll(async () => (await storedEvents(beside)).length, LIMIT).toBe(2);
  // It is stored; the copy has been asked for by then, or is a moment later.
  await beside.waitForTimeout(200);
  await letGo(beside);
  await typing;
  await expect.poll(() => copyOf(beside), LIMIT).toContain("carp three pounds");
  await bench.close();
});

test("what could not be copied keeps nothing out that comes after it", async () => {
  const { bench, beside } = await setUp();
  expect(await holdCopy(beside)).toBe(1);
  await bench.type("carp three pounds");
  // Longer than the copy waits for a file.
  await beside.waitForTimeout(4000);
  await letGo(beside);
  await bench.type("carp four pounds");
  await expect.poll(() => copyOf(beside), LIMIT).toContain("carp four pounds");
  expect(await copyOf(beside)).not.toContain("carp three pounds");
  await bench.close();
});
