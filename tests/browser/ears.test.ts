import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { build, type PreviewServer, preview } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { createReader } from "../../grammar/read.ts";
import { contentSecurityPolicy, earsFiles } from "../../vite.config.ts";
import { launchChromium } from "./chromium.ts";

/**
 * The files in `said/` are of the voice `slt` of Debian's `flite` 2.2
 * (`flite -voice slt -t "new net" -o new-net.wav`); two seconds of quiet are put around each.
 */
const SAID = ["start the session", "skimmer ten ounces", "lost one at the net", "new net"];
const QUIET_SECONDS = 2;

const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
let server: PreviewServer;
let browser: Browser;
let page: Page;
const complaints: string[] = [];

/** One WAV file of all that is said, which the browser plays as its microphone. */
function record(): string {
  const files = SAID.map((sentence) =>
    readFileSync(join("tests/browser/said", `${sentence.replaceAll(" ", "-")}.wav`)),
  );
  const [first] = files as [Buffer];
  const headBytes = 44;
  const quiet = Buffer.alloc(first.readUInt32LE(28) * QUIET_SECONDS);
  const sound = Buffer.concat([quiet, ...files.flatMap((of) => [of.subarray(headBytes), quiet])]);
  const head = Buffer.from(first.subarray(0, headBytes));
  head.writeUInt32LE(sound.length + headBytes - 8, 4);
  head.writeUInt32LE(sound.length, 40);
  const path = join(folder, "said.wav");
  writeFileSync(path, Buffer.concat([head, sound]));
  return path;
}

beforeAll(async () => {
  const outDir = join(folder, "built");
  await build({
    configFile: false,
    logLevel: "warn",
    plugins: [contentSecurityPolicy, earsFiles],
    worker: { format: "es" },
    build: { outDir, target: "es2022", rolldownOptions: { input: "tests/browser/ears-page.html" } },
  });
  server = await preview({
    configFile: false,
    logLevel: "warn",
    build: { outDir },
    preview: { host: "127.0.0.1", port: 0 },
  });
  browser = await launchChromium({
    args: [
      "--use-fake-device-for-media-stream",
      "--use-fake-ui-for-media-stream",
      `--use-file-for-fake-audio-capture=${record()}`,
    ],
  });
  page = await browser.newPage();
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") throw new Error("No port to serve on.");
  await page.goto(`http://127.0.0.1:${address.port}/tests/browser/ears-page.html`);
  await page.waitForFunction(() => "earsPage" in window);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true });
});

test("do not listen before their files have been fetched", async () => {
  await page.evaluate(() => window.earsPage.start());
  await page.waitForFunction(() => window.earsPage.told.includes("end"));
  expect(await page.evaluate(() => window.earsPage.told.splice(0))).toEqual(["unsupported", "end"]);
});

test("fetch their files once, and tell how far they are", async () => {
  const shares = await page.evaluate(() => window.earsPage.keep());
  expect(shares.at(-1)).toBe(1);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

test("hear what is said into the microphone, without a network", async () => {
  // Scripts are the service worker's to keep, so the network goes once the ears are at work.
  await page.evaluate(() => window.earsPage.start());
  await page.waitForFunction(() => window.earsPage.told.length > 0, undefined, { timeout: 15_000 });
  expect([await page.evaluate(() => window.earsPage.told), complaints]).toEqual([
    ["listening"],
    [],
  ]);
  await page.context().setOffline(true);
  const reader = createReader();
  const states = (sentence = "") => JSON.stringify(reader.read([sentence]).statements);
  const utterances = () => page.evaluate(() => window.earsPage.utterances);
  const missing = async () => {
    const heard = (await utterances()).map(({ alternatives }) => states(alternatives[0]?.text));
    return SAID.filter((sentence) => !heard.includes(states(sentence)));
  };
  // The microphone plays in real time and begins anew at its end: a machine with other work to do
  // drops sounds, and what was refused for that is heard the next time round.
  await expect.poll(missing, { timeout: 50_000, interval: 500 }).toEqual([]);
  const heard = await utterances();
  for (const { startedAt, endedAt } of heard) expect(endedAt).toBeGreaterThan(startedAt);
  await page.evaluate(() => window.earsPage.stop());
  await page.waitForFunction(() => window.earsPage.told.at(-1) === "end");
  expect(complaints).toEqual([]);
});
