/** What strangers send is shown as text and nothing else, on every screen and in every form. */
import { deflateSync } from "node:zlib";
import { expect, test } from "vitest";
import type { EntryStatement, LogEvent } from "../../src/log/event.ts";
import { ROUTES } from "../../src/screens/routes.ts";
import { INJECTIONS } from "../share/days.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";
import { goTo, phoneWith } from "./phone-with.ts";

const app = appInBrowser();

const START = Date.UTC(2026, 5, 6, 9);

/** A day in which every field that takes words holds each injection. */
function hostileLog(): string {
  const said = (text: string): EntryStatement[] => [
    { kind: "change", rig: text, bait: text, baitNote: text, depthMm: 600 },
    { kind: "fish", species: text, weightG: 900 },
    { kind: "feed", bait: text, baitNote: text },
    { kind: "conditions", wind: text, sky: text },
    { kind: "note", text },
  ];
  const bodies: LogEvent["body"][] = [
    { kind: "entry", statement: { kind: "session", act: "start" } },
    ...INJECTIONS.flatMap((text): LogEvent["body"][] => [
      { kind: "plan", plan: { water: text, peg: text, notes: text } },
      { kind: "heard" },
      ...said(text).map((statement) => ({ kind: "entry" as const, statement })),
    ]),
  ];
  const words = INJECTIONS.map((name) => ({ name, spoken: [name] }));
  bodies.push({
    kind: "plan",
    plan: { ownSpecies: words, ownBaits: words, ownRigs: words, water: `\u0001${INJECTIONS[0]}` },
  });
  const events = bodies.map((body, place): LogEvent => {
    const text = INJECTIONS[place % INJECTIONS.length] ?? "";
    return {
      v: 1,
      id: `e${place}`,
      session: "<b>s",
      device: '"><script>window.ran=true</script>',
      seq: place + 1,
      at: START + place * 60_000,
      heard: { text, alternatives: [...INJECTIONS], by: "web" },
      verdict: body.kind === "heard" ? "ignore" : place % 3 === 0 ? "check" : "log",
      body,
    };
  });
  const head = { format: "pegscribe-log", version: 1, exportedAt: 0, damaged: [] };
  return JSON.stringify({ ...head, events, settings: { weight: INJECTIONS[0] } });
}

/** What a page would show if any text of it had been taken for markup or code. */
const marks = (bench: Bench) =>
  bench.page.evaluate(() => ({
    ran: "ran" in window,
    strange: document.querySelectorAll(
      "#app script, #app iframe, #app object, #app [onload], #app [onerror], #app img[src='x']",
    ).length,
    links: [...document.querySelectorAll("#app a")].filter(
      (link) => !/^(https?|blob):/.test((link as HTMLAnchorElement).href),
    ).length,
  }));

const NONE = { ran: false, strange: 0, links: 0 };

test("no word of a stranger's log is taken for markup, on any screen or in any form", async () => {
  const bench = await phoneWith(app.browser, app.url, { log: hostileLog(), session: "<b>s" });
  const { page } = bench;
  for (const what of ["Name the water", "Name the peg", "With my notes"]) {
    await page.getByLabel(what).check();
  }
  expect(await page.locator(".goes-out").textContent()).toContain("<script>");
  expect(await marks(bench)).toEqual(NONE);
  await page.getByLabel("Picture", { exact: true }).check();
  await page.locator(".goes-out-picture").waitFor();
  expect(await marks(bench)).toEqual(NONE);
  await page.getByLabel("Link", { exact: true }).check();
  await page.locator("details").waitFor();
  await page.locator("details").evaluate((one: HTMLDetailsElement) => {
    one.open = true;
  });
  expect(await page.locator("details").textContent()).toContain("<script>");
  expect(await marks(bench)).toEqual(NONE);
  await page.pdf();
  for (const { id: screen, name } of ROUTES.filter(({ place }) => place !== "link")) {
    await goTo(page, screen);
    await page.locator(`main[aria-label="${name}"] h1`).first().waitFor();
    expect([screen, await marks(bench)]).toEqual([screen, NONE]);
  }
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test.each([
  ["cut off", "#v1.eJyrVkrLL8pV", /^The link is not whole/],
  ["of a newer version", "#v2.abc", /^This link was made by a newer Pegscribe/],
  [
    "that would unpack to gigabytes",
    `#v1.${deflateSync(Buffer.alloc(100_000_000)).toString("base64url")}`,
    /^The link is not whole/,
  ],
])("a link %s says what is wrong, and the app goes on", async (_, hash, sentence) => {
  const bench = await Bench.open(app.browser, { url: `${app.url}${hash}` });
  const { page } = bench;
  await page.getByRole("heading", { name: "This link did not open" }).waitFor();
  expect(await page.locator("main p").first().textContent()).toMatch(sentence);
  await page.getByRole("link", { name: "Open your own log" }).click();
  await page.getByLabel("Type a phrase").waitFor();
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

test.each([
  ["100 MB", 100_000_000, "x", "This file has 100 MB, more than any log"],
  ["nothing but brackets", 79_000_000, "[", "This is not a file that Pegscribe wrote"],
])("a file of %s is refused in a sentence, and nothing changes", async (_, size, letter, says) => {
  const bench = await Bench.open(app.browser, { url: app.url });
  await goTo(bench.page, "files");
  await bench.page.locator("input[type=file]").evaluate(
    (input: HTMLInputElement, [letters, of]) => {
      const files = new DataTransfer();
      files.items.add(new File([of.repeat(letters)], "large.json"));
      input.files = files.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    },
    [size, letter] as const,
  );
  await bench.page.getByText(says).waitFor();
  expect(bench.complaints).toEqual([]);
  await bench.close();
});
