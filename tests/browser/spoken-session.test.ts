import { describe, expect, test } from "vitest";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";

const app = appInBrowser("/some/folder/");

const DAY = [
  "start the session",
  "rig one, depth half a metre, size sixteen hook, on pellet",
  "F1, two pounds eight",
  "that was a lovely fish",
  "carp four pounds, feeding",
  "no, make that five pounds",
  "hook pulled",
  "new net",
  "three small roach",
  "skimmer two pounds",
  "scratch that",
  "all out",
];

/** What must be there after that day, however it was said. */
async function expectDay({ page, go, part }: Bench): Promise<void> {
  const weight = await part("Weight and count").textContent();
  expect(weight).toContain("7 lb 8 oz");
  expect(weight).toContain("5 fish");
  expect(weight).toContain("3 without a weight");
  expect(await part("Net in force").textContent()).toContain("Net 2");
  await go("Review");
  expect(await page.getByText("“that was a lovely fish”").count()).toBe(1);
  await go("Summary");
  const text = await page.locator(".goes-out").textContent();
  expect(text).toContain("7 lb 8 oz from 5 fish, 3 of them without a weight");
  expect(text).toContain("Best: carp, 5 lb");
  expect(text).toContain("Lost: 1 hook pulled");
  expect(text).toContain("rig 1, 50 cm deep, hook 16, pellet");
}

describe("a session from its start to the text that is shared", () => {
  test("spoken, without touching the phone after the start", async () => {
    const bench = await Bench.open(app.browser, { url: app.url });
    await bench.listen();
    await bench.say(...DAY);
    await expectDay(bench);
    expect(bench.complaints).toEqual([]);
    await bench.close();
  });

  test("typed, in a browser that has no speech", async () => {
    const bench = await Bench.open(app.browser, { url: app.url, speech: false });
    await bench.page.getByText("This browser has no speech recognition.").first().waitFor();
    await bench.type(...DAY);
    await expectDay(bench);
    expect(bench.complaints).toEqual([]);
    await bench.close();
  });
});

test("what is shown is what is sent, with the place only where that is allowed", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await page.evaluate(() => Object.defineProperty(navigator, "share", { value: undefined }));
  await bench.context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await bench.go("Set-up");
  await page.getByLabel("Water", { exact: true }).fill("Osier Lake");
  await page.keyboard.press("Tab");
  await bench.go("Live");
  await bench.type("F1 two pounds");
  await bench.go("Summary");
  const send = async () => {
    await page.getByRole("button", { name: "Share the text" }).click();
    await page.getByText("Copied").waitFor();
    return page.evaluate(() => navigator.clipboard.readText());
  };
  expect(await send()).toBe(await page.locator(".goes-out").textContent());
  expect(await send()).not.toContain("Osier Lake");
  await page.getByLabel("Name the water").check();
  expect(await send()).toContain("Osier Lake");
  await bench.close();
});

test("questions are answered aloud, and what was said while it spoke is heard after", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.listen();
  await bench.say("F1 two pounds", "what have I got");
  expect(await bench.spoken()).toBe("2 pounds from 1 fish.");
  await bench.say("how long left");
  expect(await bench.spoken()).toBe("No end time is set.");
  await bench.say("F1 one pound");
  expect(await bench.part("Weight and count").textContent()).toContain("3 lb");
  await bench.close();
});

test("at full talkback each entry is said back", async () => {
  const bench = await Bench.open(app.browser, { url: app.url, settings: { talkback: "full" } });
  await bench.listen();
  await bench.say("F1 two pounds eight");
  expect(await bench.spoken()).toBe("F1, 2 pounds 8 ounces. 2 pounds 8 ounces from 1 fish.");
  await bench.close();
});

test("a net near its limit is warned of aloud and on the screen", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.go("Set-up");
  await bench.page.getByRole("button", { name: "Net limit up 10 lb" }).click();
  await bench.go("Live");
  await bench.listen();
  await bench.say("carp nine pounds eight");
  const warning = "Net 1 may be over its limit: 9 pounds 8 ounces of 10 pounds by your word.";
  expect(await bench.spoken()).toBe(warning);
  await bench.page.locator(".live-nudge", { hasText: warning }).waitFor();
  await bench.close();
});

test("nothing is asked of any other place than the one the app came from", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.listen();
  await bench.say(...DAY);
  for (const screen of ["Review", "Summary", "Set-up", "Phrases", "Live"] as const) {
    await bench.go(screen);
  }
  await bench.page.waitForLoadState("networkidle");
  expect(bench.requests.length).toBeGreaterThan(5);
  const strangers = bench.requests.filter((url) => !url.startsWith(app.url));
  expect(strangers.filter((url) => !/^(data|blob):/.test(url))).toEqual([]);
  await bench.close();
});
