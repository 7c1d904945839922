import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { findings } from "./axe-findings.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser();

/** How many records each store holds of a session, past the app. */
const stored = (page: Page, session: string): Promise<Record<string, number>> =>
  page.evaluate(async (session) => {
    const finished = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await finished(indexedDB.open("pegscribe"));
    const tx = db.transaction(["events", "digests", "removed"]);
    const counts = {
      events: await finished(tx.objectStore("events").index("session").count(session)),
      digests: await finished(tx.objectStore("digests").count(session)),
      removed: await finished(tx.objectStore("removed").count(session)),
    };
    db.close();
    return counts;
  }, session);

const openSession = (page: Page) =>
  page.evaluate(() => localStorage.getItem("pegscribe.session") ?? "");

async function fish(bench: Bench, ...phrases: string[]): Promise<string> {
  await bench.type("start the session", ...phrases, "all out");
  return openSession(bench.page);
}

test("sessions are listed, added up, compared, begun like the last one, and deleted for good", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  const first = await fish(bench, "rig two, depth half a metre", "carp two pounds", "F1 one pound");

  await bench.go("Sessions");
  await page.getByRole("heading", { name: "1 session" }).waitFor();
  await page.getByText("3 lb from 2 fish").waitFor();
  const sums = page.getByRole("region", { name: "What they say together" });
  await sums.getByRole("img", { name: /^Fish an hour by depth/ }).waitFor();

  await page.getByRole("button", { name: "Start like last time" }).click();
  const inForce = page.getByRole("region", { name: "Set-up in force" });
  await inForce.getByText("50 cm").waitFor();
  const second = await fish(bench, "skimmer ten ounces");
  expect(second).not.toBe(first);

  const other = await Bench.open(app.browser, { url: app.url, context: page.context() });
  await other.go("Sessions");
  await other.page.getByRole("heading", { name: "2 sessions" }).waitFor();

  await bench.go("Sessions");
  await page.getByRole("heading", { name: "2 sessions" }).waitFor();
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    expect(await findings(bench)).toEqual([]);
  }
  for (const place of [0, 0]) {
    await page
      .getByRole("button", { name: /^Compare/ })
      .nth(place)
      .click();
  }
  await page.getByRole("heading", { name: "Side by side" }).waitFor();
  await page
    .getByRole("img", { name: /^Weight landed/ })
    .nth(1)
    .waitFor();
  expect(await findings(bench)).toEqual([]);
  await page.getByRole("button", { name: "Back to the list" }).click();

  await page
    .getByRole("button", { name: /^Delete/ })
    .nth(1)
    .click();
  await page.getByRole("button", { name: "Put it back" }).click();
  await page.getByRole("heading", { name: "2 sessions" }).waitFor();
  expect((await stored(page, first)).events).toBeGreaterThan(4);
  await page
    .getByRole("button", { name: /^Delete/ })
    .nth(1)
    .click();
  await page.getByRole("button", { name: "Put it back" }).waitFor();
  await other.page.getByRole("heading", { name: "1 session" }).waitFor();
  expect(await stored(page, first)).toEqual({ events: 0, digests: 0, removed: 1 });
  expect((await stored(page, second)).events).toBeGreaterThan(3);

  await page.reload();
  await page.getByRole("heading", { name: "1 session" }).waitFor();
  await page.getByText("10 oz from 1 fish").waitFor();
  expect([...bench.complaints, ...other.complaints]).toEqual([]);
  await bench.close();
});

test("a session that is deleted in one tab is not left open in another", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const first = await fish(bench, "carp two pounds");
  const other = await Bench.open(app.browser, { url: app.url, context: bench.page.context() });
  await other.part("Weight and count").getByText("2 lb").first().waitFor();
  await bench.go("Sessions");
  await bench.page.getByRole("button", { name: /^Delete/ }).click();
  await other.page.getByRole("button", { name: "Start the session" }).waitFor();
  expect(await openSession(other.page)).not.toBe(first);
  expect(await stored(other.page, first)).toEqual({ events: 0, digests: 0, removed: 1 });
  await bench.close();
});
