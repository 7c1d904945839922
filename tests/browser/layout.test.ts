/** How the screens lie on a phone: within a thumb's reach, with nothing cut, however large the letters. */
import { expect, test } from "vitest";
import { ROUTES } from "../../src/screens/routes.ts";
import { ALL_WARNINGS } from "../../src/scribe/warnings.ts";
import { appInBrowser } from "./app-in-browser.ts";
import { Bench } from "./bench.ts";
import { cutWords, smallTargets } from "./layout-faults.ts";

const SCREENS = ROUTES.filter(({ place }) => place !== "link");

const LONG =
  "skimmer two pounds eight, forty two centimetres, then ten centimetres shallower, potted in fifty grams of pellet, on the worm, going in";

const app = appInBrowser();

/** A phone in the middle of a session with something of every kind in it. */
async function inSession(): Promise<Bench> {
  // The pace of a day told in seconds would be called quiet, or on.
  const warnings = { ...ALL_WARNINGS, pace: false };
  const bench = await Bench.open(app.browser, { url: app.url, settings: { warnings } });
  await bench.go("Set-up");
  await bench.page.getByLabel("Water", { exact: true }).fill("Osier Lake");
  await bench.page.keyboard.press("Tab");
  await bench.go("Live");
  await bench.listen();
  await bench.type(
    "rig two, depth half a metre, size sixteen hook, on red maggot, out to eleven metres",
  );
  await bench.type(
    "F1 ninety two pounds eleven",
    "carp forty four pounds six",
    "roach forty",
    "lost one",
  );
  return bench;
}

/** What is found, with the screen's name before it. */
async function onEachScreen(bench: Bench, find: () => string[]): Promise<string[]> {
  const found: string[] = [];
  for (const { name } of SCREENS) {
    await bench.go(name);
    const faults = await bench.page.evaluate(find);
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  return found;
}

test("with letters at twice their size nothing is cut and nothing lies beside the screen", async () => {
  const bench = await inSession();
  await bench.type("that was a lovely fish");
  const devtools = await bench.context.newCDPSession(bench.page);
  await devtools.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  expect(await onEachScreen(bench, cutWords)).toEqual([]);
  await bench.close();
});

test("whatever is touched is a thumb wide", async () => {
  const bench = await inSession();
  expect(await onEachScreen(bench, smallTargets)).toEqual([]);
  await bench.close();
});

test("Live is one screenful, after a long line and with a trouble too", async () => {
  const bench = await inSession();
  const below = () =>
    bench.page.evaluate(() => {
      const main = document.querySelector("main") as HTMLElement;
      return main.scrollHeight - main.clientHeight;
    });
  expect(await below()).toBe(0);
  await bench.type(LONG);
  expect(await below()).toBe(0);
  await bench.page.evaluate(() => window.scripted.fail("service-not-allowed"));
  await bench.page.getByText("Speech recognition is switched off").first().waitFor();
  expect(await below()).toBe(0);
  await bench.close();
});

test("what is touched most lies on the side of the thumb", async () => {
  const sides = async (hand: "left" | "right") => {
    const bench = await Bench.open(app.browser, { url: app.url, settings: { hand } });
    await bench.type("F1 two pounds");
    const names = ["Start listening", "Take it back", "Enter"];
    const boxes = await Promise.all(
      names.map((name) => bench.page.getByRole("button", { name }).boundingBox()),
    );
    await bench.close();
    return boxes.map((box) => (box && box.x + box.width / 2 < 195 ? "left" : "right"));
  };
  expect(await sides("right")).toEqual(["right", "right", "right"]);
  expect(await sides("left")).toEqual(["left", "left", "left"]);
});
