/** The board as it is seen: phones that send, and one that looks on, with a real server between them. */
import { expect, test } from "vitest";
import { type Invitation, invitationHash } from "../../src/board/invitation.ts";
import { boardOfFile } from "../board/board-of-file.ts";
import { LocalBoard } from "../board/local-board.ts";
import { Phone } from "../board/phone.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { findings } from "./axe-findings.ts";
import { Bench } from "./bench.ts";
import { cutWords, smallTargets } from "./layout-faults.ts";
import { goTo } from "./phone-with.ts";

const app = appInBrowser();
const local = boardOfFile();

const soon = { timeout: 20_000, interval: 100 };

interface Stands {
  name: string;
  peg?: string;
  section?: string;
}

/** An app that has joined through the screen, as its angler would. */
async function joined(invitation: Invitation, { name, peg, section }: Stands): Promise<Bench> {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await goTo(page, invitationHash(invitation).slice(1));
  await page.getByLabel("Your name on the board").fill(name);
  if (peg) await page.getByLabel("Peg", { exact: true }).fill(peg);
  if (section) await page.getByLabel("Section", { exact: true }).fill(section);
  await page.keyboard.press("Tab");
  await page.getByRole("button", { name: "Join", exact: true }).click();
  await page.getByText("You are on the board").waitFor();
  return bench;
}

/** A row as it is read, its lines one after the other. */
const rowOf = ({ page }: Bench, name: string) =>
  page.locator("li.board-row", { has: page.getByRole("heading", { name, exact: true }) });

test("two phones see each other on the board, and what one logs the other sees", async () => {
  const ada = await joined(await local.invite("peg-1"), { name: "Ada", peg: "12", section: "A" });
  const bo = await joined(await local.invite("peg-2"), { name: "Bo", peg: "9", section: "A" });
  await goTo(bo.page, "board");
  await rowOf(bo, "Peg 12, Ada").waitFor();
  await goTo(ada.page, "live");
  await ada.type("rig two, depth half a metre, on maggot", "carp two pounds");
  await expect.poll(() => rowOf(bo, "Peg 12, Ada").textContent(), soon).toContain("1 fish");
  expect(await rowOf(bo, "Peg 12, Ada").textContent()).toContain("rig 2, 50 cm deep, maggot");
  await expect
    .poll(() => rowOf(bo, "Peg 12, Ada").textContent(), soon)
    .toContain("Section A: place 1 of 2");
  // In the order of the bank.
  expect(await bo.page.locator(".board-row h3").allTextContents()).toEqual([
    "Peg 9, Bo",
    "Peg 12, Ada",
  ]);
  await ada.type("scratch that");
  await expect.poll(() => rowOf(bo, "Peg 12, Ada").textContent(), soon).toContain("No fish yet");
  expect([...ada.complaints, ...bo.complaints]).toEqual([]);
  await ada.close();
  await bo.close();
});

test("a server that is killed leaves the board as it stood, and once it is back it is live again", async () => {
  const own = await LocalBoard.open();
  const phone = new Phone();
  phone.open(await phone.join(await own.invite("peg-1")));
  await phone.logFish(2);
  const bench = await joined(await own.invite("peg-2"), { name: "Bo" });
  await goTo(bench.page, "board");
  const row = rowOf(bench, "Angler peg-1");
  await expect.poll(() => row.textContent(), soon).toContain("2 fish");
  await own.board.stop("SIGKILL");
  await bench.page.getByText("The board is out of reach.").waitFor();
  expect(await row.textContent()).toContain("2 fish");
  await phone.logFish(1);
  await own.board.restart();
  await expect.poll(() => row.textContent(), { ...soon, timeout: 60_000 }).toContain("3 fish");
  await bench.page.getByText("2 pegs, live.").waitFor();
  phone.close();
  await bench.close();
  await own.close();
}, 120_000);

/** Sixty phones in three sections, each with a few fish. */
async function crowd(own: LocalBoard): Promise<void> {
  for (let n = 1; n <= 60; n += 1) {
    const phone = new Phone();
    phone.open(await phone.join(await own.invite(`peg-${n}`)));
    await phone.logFish(1 + (n % 5));
  }
}

test("it lies well on a phone and on a wide screen, however large the letters, and axe finds nothing", async () => {
  const own = await LocalBoard.open();
  await crowd(own);
  const stands = { name: "Philippa Wetherington-Ashby", peg: "107", section: "North bank" };
  const bench = await joined(await own.invite("watching"), stands);
  const { page } = bench;
  await goTo(page, "board");
  await page.getByText("61 pegs, live.").waitFor();
  await page.getByRole("radio", { name: "Section" }).check();
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    expect([colorScheme, ...(await findings(bench))]).toEqual([colorScheme]);
  }
  const faults = async () => [
    ...(await page.evaluate(cutWords)),
    ...(await page.evaluate(smallTargets)),
  ];
  expect(await faults()).toEqual([]);
  await page.setViewportSize({ width: 1280, height: 800 });
  expect(await faults()).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  const devtools = await bench.context.newCDPSession(page);
  await devtools.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  expect(await page.evaluate(cutWords)).toEqual([]);
  await bench.close();
  await own.close();
}, 120_000);

test("what lies further down is drawn once it comes into sight", async () => {
  const own = await LocalBoard.open();
  await crowd(own);
  const bench = await joined(await own.invite("watching"), { name: "Bo" });
  await goTo(bench.page, "board");
  await bench.page.getByText("61 pegs, live.").waitFor();
  const last = bench.page.getByRole("heading", { name: "Bo", exact: true });
  expect(await rowOf(bench, "Bo").count()).toBe(0);
  await last.scrollIntoViewIfNeeded();
  await rowOf(bench, "Bo").getByText("Nothing logged yet").waitFor();
  await bench.close();
  await own.close();
}, 120_000);
