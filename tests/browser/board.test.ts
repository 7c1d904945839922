/** Phones and a board, with the app as built and a real server between them. */
import { expect, test } from "vitest";
import { type Invitation, invitationHash } from "../../src/board/invitation.ts";
import { boardOfFile } from "../board/board-of-file.ts";
import { LocalBoard } from "../board/local-board.ts";
import { Watcher } from "../board/watcher.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { startAppServer } from "./app-server.ts";
import { findings } from "./axe-findings.ts";
import { Bench } from "./bench.ts";
import { cutWords, smallTargets } from "./layout-faults.ts";
import { goTo } from "./phone-with.ts";

const app = appInBrowser();
const local = boardOfFile();

const within = { timeout: 20_000, interval: 50 };

async function joinAs(bench: Bench, invitation: Invitation, name: string): Promise<void> {
  await goTo(bench.page, invitationHash(invitation).slice(1));
  await bench.page.getByLabel("Your name on the board").pressSequentially(name);
  await bench.page.getByRole("button", { name: "Join", exact: true }).click();
  await bench.page.getByText(`As ${name}, on seat`).waitFor();
}

/** What a watching seat reads of one seat: the fish in grams, to the nearest. */
function fishOf(watcher: Watcher, seat: string): number[] {
  return watcher.said.flatMap(({ from, message }) => {
    if (from.seat !== seat || message?.is !== "event") return [];
    const { body } = message.event;
    if (body.kind !== "entry" || body.statement.kind !== "fish") return [];
    return [Math.round(body.statement.weightG ?? 0)];
  });
}

test("a phone joins by its link and sends; its page itself can't reach the board's server", async () => {
  const watcher = new Watcher(await local.invite("watch-1"));
  const bench = await Bench.open(app.browser, { url: app.url });
  await bench.type("F1 one pound");
  await joinAs(bench, await local.invite("peg-1"), "Ada of the Lake");
  await goTo(bench.page, "live");
  await bench.type("carp two pounds");
  await expect.poll(() => fishOf(watcher, "peg-1"), within).toEqual([454, 907]);
  const { localAddress } = local.board;
  const outcome = await bench.page.evaluate(async (address) => {
    const refused = new Promise<string>((told) =>
      document.addEventListener("securitypolicyviolation", (one) => told(one.effectiveDirective)),
    );
    try {
      new WebSocket(address);
    } catch {
      // Some browsers throw besides.
    }
    return refused;
  }, localAddress);
  expect(outcome).toBe("connect-src");
  expect(await bench.page.evaluate(() => location.hash)).not.toContain("seed");
  watcher.close();
  await bench.close();
});

test("a phone without its server or a network logs on, and brings all when the way is back", async () => {
  const own = await LocalBoard.open();
  const server = await startAppServer();
  const watcher = new Watcher(await own.invite("watch-1"));
  const bench = await Bench.open(app.browser, { url: server.url });
  const { page } = bench;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await joinAs(bench, await own.invite("peg-1"), "Ada");
  await goTo(page, "live");
  await bench.type("F1 one pound");
  await expect.poll(() => fishOf(watcher, "peg-1"), within).toEqual([454]);
  // The app's own server for good, the board's for a session.
  await server.close();
  await own.board.stop("SIGKILL");
  await bench.type("carp two pounds", "F1 three pounds");
  await page.reload();
  await expect.poll(() => bench.part("Weight and count").textContent()).toContain("6 lb");
  await bench.type("tench one pound");
  await goTo(page, "join");
  await page.getByText("The board is out of reach. 3 entries wait here").waitFor();
  await own.board.restart();
  await page.getByText("All that you logged is on the board.").waitFor({ timeout: 90_000 });
  await expect.poll(() => fishOf(watcher, "peg-1"), within).toEqual([454, 907, 1361, 454]);
  watcher.close();
  await bench.close();
  await own.close();
});

test("leaving ends it, for other tabs too, and what comes after stays on the phone", async () => {
  const watcher = new Watcher(await local.invite("watch-2"));
  const bench = await Bench.open(app.browser, { url: app.url });
  await joinAs(bench, await local.invite("peg-2"), "Ben");
  await goTo(bench.page, "live");
  await bench.type("F1 one pound");
  await expect.poll(() => fishOf(watcher, "peg-2"), within).toEqual([454]);
  const other = await Bench.open(app.browser, { url: `${app.url}#join`, context: bench.context });
  await other.page.getByText("You are on the board").waitFor();
  await goTo(bench.page, "join");
  await bench.page.getByRole("button", { name: "Leave the board" }).click();
  await bench.page.getByLabel("Your invitation’s link").waitFor();
  await goTo(bench.page, "live");
  await bench.page.bringToFront();
  await bench.type("carp two pounds");
  await other.page.getByLabel("Your invitation’s link").waitFor();
  await joinAs(bench, await local.invite("peg-3"), "Ben");
  // The board has the first fish already, on the seat where it was caught.
  await expect.poll(() => fishOf(watcher, "peg-3"), within).toEqual([907]);
  expect(fishOf(watcher, "peg-2")).toEqual([454]);
  watcher.close();
  await bench.close();
});

test("what a board refuses is said where it is joined, and on Live", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const [mine, other] = [await local.invite("peg-4"), await local.invite("peg-5")];
  await joinAs(bench, { ...mine, seed: other.seed }, "Cy");
  await bench.page.getByText("The board does not know this invitation.").waitFor();
  await goTo(bench.page, "live");
  await bench.page.getByText("Nothing goes to the board.").waitFor();
  await bench.type("F1 one pound");
  await goTo(bench.page, "join");
  await bench.page.getByText(/[1-9] entr(y|ies) waits? here; none is lost\./).waitFor();
  await bench.close();
});

test("an invitation that is over, or not whole, is not offered to be joined", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  await goTo(page, invitationHash(await local.invite("peg-6", Date.now() - 1000)).slice(1));
  await page.getByText("This invitation is over.").waitFor();
  expect(await page.getByRole("button", { name: "Join", exact: true }).count()).toBe(0);
  await goTo(page, "live");
  await goTo(page, "join?address=ws://127.0.0.1&board=osier");
  await page.getByText("This is no invitation").waitFor();
  await bench.close();
});

test("joining lies well on a phone, however large the letters, and axe finds nothing", async () => {
  const bench = await Bench.open(app.browser, { url: app.url });
  const { page } = bench;
  const devtools = await bench.context.newCDPSession(page);
  const faults = async (state: string) => {
    const found: string[] = [];
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      found.push(...(await findings(bench)));
    }
    found.push(...(await page.evaluate(smallTargets)));
    for (const standard of [32, 16]) {
      await devtools.send("Page.setFontSizes", { fontSizes: { standard, fixed: standard - 3 } });
      found.push(...(await page.evaluate(cutWords)));
    }
    return found.map((fault) => `${state}: ${fault}`);
  };
  await goTo(page, "join");
  await page.getByLabel("Your invitation’s link").waitFor();
  const found = await faults("nothing yet");
  await goTo(page, invitationHash(await local.invite("peg-7")).slice(1));
  await page.getByText("You are invited").waitFor();
  found.push(...(await faults("invited")));
  await page.getByLabel("Your name on the board").fill("Philippa Wetherington-Ashby");
  await page.getByRole("button", { name: "Join", exact: true }).click();
  await page.getByText("All that you logged is on the board.").waitFor();
  found.push(...(await faults("joined")));
  expect(found).toEqual([]);
  await bench.close();
});
