/** What was said must outlive reloads, other tabs, and a browser that does not store. */
import { expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser();

const weight = (bench: Bench) => bench.part("Weight and count").textContent();

test("a reload in the middle loses nothing, and the session goes on", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.listen();
  await bench.say("rig two, depth half a metre", "F1 two pounds", "make that three pounds");
  await bench.page.reload();
  await expect.poll(() => weight(bench)).toContain("3 lb");
  expect(await bench.part("Set-up in force").textContent()).toContain("50 cm");
  await bench.listen();
  await bench.say("make that four pounds", "carp one pound");
  expect(await weight(bench)).toContain("5 lb");
  await bench.close();
});

test("a new session starts empty, and the old one can be opened again", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await bench.type("F1 two pounds", "all out");
  await bench.go("Sessions");
  await page.getByRole("button", { name: "New session" }).click();
  await page.getByRole("button", { name: "Start the session" }).waitFor();
  await bench.type("carp nine pounds", "all out");
  expect(await weight(bench)).toContain("9 lb");
  await bench.go("Sessions");
  await page.getByRole("button", { name: /^Open:/ }).click();
  await bench.go("Live");
  await expect.poll(() => weight(bench)).toContain("2 lb");
  await bench.close();
});

test("two tabs on one session follow each other, and only one of them listens", async () => {
  const one = await Bench.open(app.browser, { url: app.url });
  await one.listen();
  await one.say("F1 two pounds");
  const other = await Bench.open(app.browser, { url: app.url, context: one.context });
  await expect.poll(() => weight(other)).toContain("2 lb");
  await other.type("carp three pounds");
  await expect.poll(() => weight(one)).toContain("5 lb");
  await one.say("make that four pounds");
  await expect.poll(() => weight(other)).toContain("6 lb");

  await other.page.getByRole("button", { name: "Start listening" }).click();
  await other.page.getByText("Another tab is listening.").first().waitFor();
  expect(await other.page.evaluate(() => window.scripted.isListening())).toBe(false);
  await one.page.getByRole("button", { name: "Stop listening" }).click();
  await one.page.getByRole("heading", { name: "Not listening" }).waitFor();
  await other.page.getByRole("button", { name: "Try again" }).click();
  await other.page.getByRole("heading", { name: "Listening", exact: true }).waitFor();
  await one.close();
});

test("where the browser refuses to store, it says so, aloud too, and keeps what was said", async () => {
  const bench = await Bench.open(app.browser, { url: app.url, storage: false });
  const { page } = bench;
  await bench.listen();
  await bench.say("F1 two pounds");
  expect(await bench.spoken()).toMatch(/^F1, 2 pounds\. Not stored yet\./);
  await page.getByText("Waiting to be stored").waitFor();
  await page.getByText("1 entry is not stored.").waitFor();
  expect(await weight(bench)).toContain("2 lb");
  await bench.go("Summary");
  await page.getByRole("link", { name: "Keep, move or take in the whole log" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the log as a file" }).click();
  const stream = await (await download).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk);
  const log = JSON.parse(Buffer.concat(chunks).toString());
  expect(log.events).toHaveLength(1);
  expect(log.events[0].heard.text).toBe("F1 two pounds");
  await bench.close();
});

test("a microphone that is refused is named as the trouble, and typing goes on", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.listen();
  await bench.page.evaluate(() => window.scripted.fail("service-not-allowed"));
  await bench.page
    .getByText("Speech recognition is switched off on this device.")
    .first()
    .waitFor();
  await bench.type("F1 two pounds");
  expect(await weight(bench)).toContain("2 lb");
  await bench.close();
});

test("the sample plays by itself and leaves the angler's own session as it was", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.page.getByRole("button", { name: "Play a sample session" }).click();
  await bench.page.getByText(/phrase [3-9] of \d+/).waitFor();
  expect(await bench.page.getByText("Osier Lake").count()).toBeGreaterThan(0);
  await bench.page.getByRole("button", { name: "Leave the sample" }).click();
  await bench.page.getByRole("button", { name: "Play a sample session" }).waitFor();
  await bench.page.reload();
  await bench.go("Set-up");
  expect(await bench.page.getByText(/\d\d:\d\d to /).count()).toBe(0);
  await bench.close();
});

test("an app that arrived in part says so, and comes right once the rest can be had", async () => {
  const context = await app.browser.newContext();
  await context.route(/attendant/, (route) => route.abort());
  const bench = await Bench.open(app.browser, { url: app.url, context });
  await bench.page.getByText("The app did not arrive whole.").first().waitFor();
  await context.unroute(/attendant/);
  await bench.page.reload();
  await bench.type("F1 two pounds");
  expect(await weight(bench)).toContain("2 lb");
  await bench.close();
});
