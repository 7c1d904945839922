/** Nothing leaves the phone unasked: every request of a whole session is watched from outside the browser. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach, expect, inject, test } from "vitest";
import { ROUTES } from "../../src/screens/routes.ts";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";
import { keptSounds } from "./kept-sounds.ts";
import { goTo } from "./phone-with.ts";
import {
  moreThanFiles,
  NO_HELP_WITH_FORMS,
  type WatchingProxy,
  watchedPhone,
  watchRequests,
} from "./watching-proxy.ts";

let server: AppServer;
let proxy: WatchingProxy;
let browser: Browser;
let before: number;

beforeAll(async () => {
  server = await startAppServer("/some/folder/");
  proxy = await watchRequests(server.url);
  browser = await launchChromium({ args: [NO_HELP_WITH_FORMS] });
});

beforeEach(() => {
  before = proxy.asked.length;
});

afterAll(async () => {
  await browser?.close();
  await proxy?.close();
  await server?.close();
});

const asked = () => proxy.asked.slice(before);
const watched = () => watchedPhone(browser, proxy);
const strangers = () => asked().filter(({ address }) => !address.startsWith(server.url));

const DAY = [
  ...["start the session", "rig two, depth half a metre", "F1 two pounds eight", "feeding"],
  ...["what have I got", "carp four pounds", "make that five pounds", "hook pulled", "new net"],
  ...["that was a lovely fish", "note, fish topping by the reeds", "scratch that", "all out"],
];

test("a whole session asks its own folder for files, sends nothing, and keeps no sound", async () => {
  const bench = await Bench.open(browser, { url: server.url, context: await watched() });
  const { page } = bench;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await bench.listen();
  await bench.say(...DAY);
  for (const { id, name } of ROUTES.filter(({ place }) => place !== "link")) {
    await goTo(page, id);
    await page.locator(`main[aria-label="${name}"] h1`).first().waitFor();
  }
  await bench.go("Summary");
  await page.getByLabel("Picture", { exact: true }).check();
  await page.locator(".goes-out-picture").waitFor();
  await page.getByLabel("Link", { exact: true }).check();
  await page.locator("details").waitFor();
  await page.getByRole("link", { name: "Keep, move or take in the whole log" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the log as a file" }).click();
  await download;
  await page.reload();
  await page.waitForLoadState("networkidle");
  expect(asked().length).toBeGreaterThan(10);
  expect(moreThanFiles(asked(), server.url, inject("appFolder"))).toEqual([]);
  expect(await keptSounds(page)).toEqual([]);
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test("ears that were to hear on the phone, and can't, listen no more before that is said", async () => {
  const bench = await Bench.open(browser, { url: server.url, speech: "on-device" });
  const { page } = bench;
  await bench.listen();
  await page.getByText("By the browser, on this phone").waitFor();
  await page.evaluate(() => window.scripted.fail("language-not-supported"));
  await page.getByText("The browser turns speech into words and sends the sound").waitFor();
  expect(await bench.spoken()).toMatch(/^The browser can’t hear on this phone after all/);
  expect(await page.evaluate(() => window.scripted.isListening())).toBe(false);
  await bench.close();
});

test("what is in the page cannot ask anybody else, in any of the usual ways", async () => {
  const bench = await Bench.open(browser, { url: server.url, context: await watched() });
  const { page } = bench;
  const outcome = await page.evaluate(async () => {
    const strange = "http://stranger.example";
    const failed = (trying: Promise<unknown>) =>
      trying.then(
        () => "got out",
        () => "refused",
      );
    const loaded = (made: HTMLElement, name: "src" | "href") =>
      new Promise((done) => {
        made.onload = () => done("got out");
        made.onerror = () => done("refused");
        made.setAttribute(name, `${strange}/x`);
        document.body.append(made);
      });
    const sheet = Object.assign(document.createElement("link"), { rel: "stylesheet" });
    const socket = () =>
      new Promise((done) => {
        try {
          const opened = new WebSocket("ws://stranger.example/");
          opened.onerror = () => done("refused");
          opened.onopen = () => done("got out");
        } catch {
          done("refused");
        }
      });
    navigator.sendBeacon(strange, "log");
    return {
      fetch: await failed(fetch(strange)),
      image: await loaded(document.createElement("img"), "src"),
      script: await loaded(document.createElement("script"), "src"),
      sheet: await loaded(sheet, "href"),
      socket: await socket(),
    };
  });
  expect(new Set(Object.values(outcome))).toEqual(new Set(["refused"]));
  expect(strangers()).toEqual([]);
  await bench.close();
});

/** Whether anything comes back is nothing to the watcher. */
test("the watcher sees what does go to a stranger", async () => {
  const page = await (await watched()).newPage();
  // An empty page has no policy. Fetched, not gone to: a page of a failed visit may not close again.
  await page.evaluate(async () => {
    for (const scheme of ["http", "https"])
      await fetch(`${scheme}://stranger.example/`, { mode: "no-cors" }).catch(() => {});
  });
  const met = strangers().map(({ address }) => address);
  expect(met).toContain("http://stranger.example/");
  expect(met).toContain("stranger.example:443");
  await page.close();
});
