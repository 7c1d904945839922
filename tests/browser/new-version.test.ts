import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { installFaults } from "../trials/storage/faults-page.ts";
import { type AppServer, startAppServer } from "./app-server.ts";
import { Bench } from "./bench.ts";
import { launchChromium } from "./chromium.ts";
import { finished, makeV1, V1_DEVICE, V1_EVENTS } from "./store-v1.ts";

let browser: Browser;
let server: AppServer;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  cpSync(inject("appFolder"), folder, { recursive: true });
  browser = await launchChromium();
  server = await startAppServer("/", folder);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/**
 * In the page: says when the app must know that a new version waits. It does so 200 ms after the
 * browser (workbox-window); timers of one page go off in their order however busy the machine is.
 */
function tellOfWaiting(): void {
  const { register } = ServiceWorkerContainer.prototype;
  ServiceWorkerContainer.prototype.register = async function (...args) {
    const made = await register.apply(this, args);
    const look = () => {
      if (made.waiting) setTimeout(() => Object.assign(window, { knowsOfIt: true }), 1000);
      else setTimeout(look, 50);
    };
    look();
    return made;
  };
}

/** The app looks every second at what is at stake. */
const looksAgain = (page: Page) =>
  page.evaluate(() => new Promise((done) => setTimeout(done, 3000)));

const leavesUnasked = () => dispatchEvent(new Event("beforeunload", { cancelable: true }));

test("a new version is offered between sessions, never in one, and is taken when told to", async () => {
  const bench = await Bench.open(browser, { url: server.url });
  const { page } = bench;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await bench.type("F1 two pounds");
  appendFileSync(join(folder, "sw.js"), "\n// A later version.\n");
  await page.addInitScript(tellOfWaiting);
  await page.addInitScript(installFaults, undefined);
  await page.reload();
  await page.waitForFunction(async () => {
    const worker = await navigator.serviceWorker.getRegistration();
    return worker?.waiting !== null && worker?.waiting !== undefined;
  });
  const offer = page.getByText("A new version is here.");
  await page.waitForFunction(() => "knowsOfIt" in window);
  await looksAgain(page);
  expect(await offer.count()).toBe(0);
  // The session is over, but its end is only in memory: loading the new version would lose it.
  await page.evaluate(() => {
    window.fault = "refused";
  });
  await bench.type("all out");
  await page.getByText("1 entry is not stored.").waitFor();
  await looksAgain(page);
  expect(await offer.count()).toBe(0);
  expect(await page.evaluate(leavesUnasked)).toBe(false);
  await page.evaluate(() => {
    window.fault = undefined;
  });
  await offer.waitFor();
  expect(await page.evaluate(leavesUnasked)).toBe(true);
  const loaded = page.waitForEvent("load");
  await page.getByRole("button", { name: "Take it now" }).click();
  await loaded;
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("2 lb");
  const worker = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return { waits: registration?.waiting !== null, leads: registration?.active?.state };
  });
  expect(worker).toEqual({ waits: false, leads: "activated" });
  await bench.close();
});

/** Runs in a page of the app's own place on the web, before the app is there. */
const ofTheStore = [
  `const V1_DEVICE = ${JSON.stringify(V1_DEVICE)}`,
  `const V1_EVENTS = ${JSON.stringify(V1_EVENTS)}`,
  // What sends functions as text may have put names on them.
  "globalThis.__name ??= (named) => named",
  ...[finished, makeV1].map(String),
].join(";\n");

test("an app of today opens the log that one of version 1 has left", async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`${server.url}icon.svg`);
  await page.evaluate(`${ofTheStore};\nmakeV1("pegscribe")`);
  await page.evaluate(() => localStorage.setItem("pegscribe.session", "saturday"));
  const bench = await Bench.open(browser, { url: server.url, context });
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("3 lb");
  await bench.type("F1 two pounds");
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("5 lb");
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test("an app that is older than the log says so, keeps what is said, and harms nothing", async () => {
  const bench = await Bench.open(browser, { url: server.url });
  const { page } = bench;
  await bench.type("F1 two pounds");
  // As a later version would have left it, in another tab.
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open("pegscribe", 99);
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          opening.result.close();
          done();
        };
      }),
  );
  await bench.type("carp three pounds");
  await page.getByText("1 entry is not stored.").waitFor();
  await page
    .getByText(/the log in a different version/)
    .first()
    .waitFor();
  expect(await bench.part("Weight and count").textContent()).toContain("5 lb");
  await page.reload();
  await page
    .getByText(/the log in a different version/)
    .first()
    .waitFor();
  const stored = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const opening = indexedDB.open("pegscribe");
        opening.onsuccess = () => {
          const count = opening.result.transaction("events").objectStore("events").count();
          count.onsuccess = () => done(count.result);
        };
      }),
  );
  expect(stored).toBe(1);
  await bench.close();
});

test("a new version leaves a session of another tab alone until that tab is loaded again", async () => {
  const bench = await Bench.open(browser, { url: server.url });
  const { page } = bench;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await bench.type("F1 two pounds");
  await page.evaluate(() => Object.assign(window, { isTheSamePage: true }));
  appendFileSync(join(folder, "sw.js"), "\n// Another later version.\n");
  await page.evaluate(async () => {
    const worker = await navigator.serviceWorker.getRegistration();
    await worker?.update();
    worker?.waiting?.postMessage({ type: "SKIP_WAITING" });
  });
  await bench.type("carp three pounds");
  expect(await page.evaluate(() => "isTheSamePage" in window)).toBe(true);
  expect(await bench.part("Weight and count").textContent()).toContain("5 lb");
  await bench.close();
});

/** A later version whose Review is in another file, as after any change to it. */
function changeReview(): void {
  const assets = join(folder, "assets");
  const name = readdirSync(assets).find((one) => /^review-.*\.js$/.test(one)) ?? "";
  renameSync(join(assets, name), join(assets, "review-later.js"));
  const worker = join(folder, "sw.js");
  const text = readFileSync(worker, "utf8");
  expect(text).toContain(name);
  writeFileSync(worker, text.replaceAll(name, "review-later.js"));
}

test("a new version is not offered while another tab is fishing, whose files would go with it", async () => {
  const context = await browser.newContext();
  await context.addInitScript(tellOfWaiting);
  const idle = await Bench.open(browser, { url: server.url, context });
  await idle.page.evaluate(() => navigator.serviceWorker.ready);
  await idle.type("F1 two pounds", "all out");
  const fishing = await Bench.open(browser, { url: server.url, context });
  await fishing.go("Sessions");
  await fishing.page.getByRole("button", { name: "New session" }).click();
  await fishing.page.getByRole("button", { name: "Start the session" }).waitFor();
  await fishing.type("carp three pounds");
  changeReview();
  await idle.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await idle.page.waitForFunction(() => "knowsOfIt" in window);
  const offer = idle.page.getByText("A new version is here.");
  await looksAgain(idle.page);
  expect(await offer.count()).toBe(0);
  await fishing.go("Review");
  await fishing.go("Live");
  await fishing.type("all out");
  await offer.waitFor();
  await fishing.close();
});

test("nor while the angler's own session runs on behind what is only tried", async () => {
  const context = await browser.newContext();
  await context.addInitScript(tellOfWaiting);
  const trying = await Bench.open(browser, { url: server.url, context });
  await trying.page.evaluate(() => navigator.serviceWorker.ready);
  await trying.go("First steps");
  const fishing = await Bench.open(browser, { url: server.url, context });
  await fishing.type("carp three pounds");
  await fishing.page.close();
  appendFileSync(join(folder, "sw.js"), "\n// The latest version.\n");
  await trying.page.evaluate(async () =>
    (await navigator.serviceWorker.getRegistration())?.update(),
  );
  await trying.page.waitForFunction(() => "knowsOfIt" in window);
  await looksAgain(trying.page);
  expect(await trying.page.getByText("A new version is here.").count()).toBe(0);
  await trying.go("Live");
  expect(await trying.part("Weight and count").textContent()).toContain("3 lb");
  await trying.close();
});

/** In the page: nobody touches it, however lately a test has. */
function untouched(): void {
  Object.defineProperty(navigator, "userActivation", { value: { isActive: false } });
}

/** Two tabs without a session; in the second a new version is taken. */
async function takenInAnotherTab(before: (tab: Bench) => Promise<unknown>) {
  const context = await browser.newContext();
  await context.addInitScript(untouched);
  const tab = await Bench.open(browser, { url: server.url, context });
  await tab.page.evaluate(() => navigator.serviceWorker.ready);
  const other = await Bench.open(browser, { url: server.url, context });
  await before(tab);
  await tab.page.evaluate(() => Object.assign(window, { isTheSamePage: true }));
  appendFileSync(join(folder, "sw.js"), "\n// One for two tabs.\n");
  await other.page.evaluate(async () =>
    (await navigator.serviceWorker.getRegistration())?.update(),
  );
  await other.page.getByRole("button", { name: "Take it now" }).click();
  await tab.page.getByText("A new version is here.").waitFor();
  const isTheSame = () => tab.page.evaluate(() => "isTheSamePage" in window);
  return { tab, isTheSame };
}

test("a tab with nothing at stake goes over to what another one has taken, once nothing is lost by it", async () => {
  const { tab, isTheSame } = await takenInAnotherTab(async ({ page }) => {
    await page.getByLabel("Type a phrase").fill("carp");
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await looksAgain(page);
    // What has just come is of the page's own version.
    expect(await page.getByText("A new version is here.").count()).toBe(0);
  });
  const stays = async () => {
    await looksAgain(tab.page);
    expect(await isTheSame()).toBe(true);
  };
  await stays();
  await tab.listen();
  await tab.page.getByLabel("Type a phrase").fill("");
  await stays();
  await tab.page.getByRole("button", { name: "Stop listening" }).click();
  await expect.poll(isTheSame, { timeout: 20_000 }).toBe(false);
  expect(await tab.page.getByText("A new version is here.").count()).toBe(0);
  await tab.close();
});

test("the next screen is opened in the version that another tab has taken, but not while a session can be put back", async () => {
  const { tab, isTheSame } = await takenInAnotherTab(async (tab) => {
    await tab.type("F1 two pounds", "all out");
    await tab.go("Sessions");
    await tab.page.getByRole("button", { name: /^Delete/ }).click();
  });
  await tab.go("Live");
  await looksAgain(tab.page);
  expect(await isTheSame()).toBe(true);
  await tab.go("Sessions");
  await tab.page.getByRole("button", { name: "Put it back" }).click();
  await tab.page.getByRole("button", { name: /^Delete/ }).waitFor();
  await looksAgain(tab.page);
  expect(await isTheSame()).toBe(true);
  await tab.go("Review");
  await expect.poll(isTheSame).toBe(false);
  expect(tab.page.url()).toBe(`${server.url}#review`);
  await tab.close();
});

test("a new version is taken also where the browser never tells that it is in charge", async () => {
  const { page } = await Bench.open(browser, { url: server.url });
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.addInitScript(() => {
    navigator.serviceWorker.addEventListener("controllerchange", (event) =>
      event.stopImmediatePropagation(),
    );
  });
  await page.reload();
  appendFileSync(join(folder, "sw.js"), "\n// One that is not told of.\n");
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  const take = page.getByRole("button", { name: "Take it now" });
  await take.waitFor();
  const loaded = page.waitForEvent("load");
  await take.click();
  await loaded;
  await page.getByRole("button", { name: "Start listening" }).waitFor();
  expect(
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting),
  ).toBeNull();
  await page.context().close();
});
