/**
 * What the ears inside the app hear is sent nowhere and kept nowhere. They run in a worker, which the
 * page's policy does not bind, so this is watched from outside the browser.
 */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";
import { getReady } from "./get-ready.ts";
import { cachedAddresses, keptSounds } from "./kept-sounds.ts";
import { microphoneArgs, saidInASession, spoken, writeWav } from "./recording.ts";
import {
  moreThanFiles,
  NO_HELP_WITH_FORMS,
  type WatchingProxy,
  watchedPhone,
  watchRequests,
} from "./watching-proxy.ts";

const SAID = ["start the session", "carp four pounds", "three small roach"];

const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
let server: AppServer;
let proxy: WatchingProxy;
let browser: Browser;

beforeAll(async () => {
  server = await startAppServer();
  proxy = await watchRequests(server.url);
  const path = join(folder, "said.wav");
  writeWav(path, spoken(SAID.map(saidInASession)));
  browser = await launchChromium({ args: [NO_HELP_WITH_FORMS, ...microphoneArgs(path)] });
});

afterAll(async () => {
  await browser?.close();
  await proxy?.close();
  await server?.close();
  rmSync(folder, { recursive: true });
});

/** A machine with other work to do drops sound now and then: what was lost that way is spoken again. */
const SPOKEN_AGAIN = { retry: 2 };

test(
  "what is heard on the phone is sent to nobody, and no sound of it is kept",
  SPOKEN_AGAIN,
  async () => {
    const context = await watchedPhone(browser, proxy);
    const bench = await Bench.open(browser, { url: server.url, speech: false, context });
    const { page } = bench;
    await getReady(bench);
    await bench.go("Live");
    await bench.listen();
    await bench.taken("three small roach");
    await bench.go("Your voice");
    await page.getByRole("button", { name: "Begin" }).click();
    await page.getByText(/^Heard “/).waitFor();
    await bench.go("Live");
    expect(proxy.asked.length).toBeGreaterThan(10);
    expect(moreThanFiles(proxy.asked, server.url, inject("appFolder"))).toEqual([]);
    expect(await keptSounds(page)).toEqual([]);
    const cached = (await cachedAddresses(page)).map((one) => one.slice(server.url.length));
    expect(cached.length).toBeGreaterThan(10);
    expect(cached.filter((one) => !existsSync(join(inject("appFolder"), one)))).toEqual([]);
    await bench.close();
  },
);
