import { expect, test, vi } from "vitest";
import { HomeScreen } from "../../src/scribe/home-screen.ts";
import { readSettings } from "../../src/scribe/settings.ts";
import { StorageCare } from "../../src/scribe/storage-care.ts";

const settled = () => new Promise((resolve) => setTimeout(resolve));

test("what the browser has promised is known from the start, and again once it was asked", async () => {
  const care = new StorageCare({ isGiven: async () => false, ask: async () => true });
  expect(care.state.value).toBe("unknown");
  await settled();
  expect(care.state.value).toBe("may-go");
  await care.ask();
  expect(care.state.value).toBe("kept");
});

test("a browser that does not tell, or refuses to be asked, leaves it unknown", async () => {
  const care = new StorageCare({
    isGiven: async () => undefined,
    ask: () => Promise.reject(new Error("Not here.")),
  });
  await care.ask();
  expect(care.state.value).toBe("unknown");
});

function fakeWindow(isStandalone: boolean) {
  const matchMedia = () => ({ matches: isStandalone }) as MediaQueryList;
  return Object.assign(new EventTarget(), { matchMedia });
}

test.each([
  [true, "there"],
  [false, "by-menu"],
] as const)("opened from the home screen: %s", (isStandalone, state) => {
  expect(new HomeScreen(fakeWindow(isStandalone)).state.value).toBe(state);
});

test("an offer is kept until it is asked for, and taken once", async () => {
  const window = fakeWindow(false);
  const home = new HomeScreen(window);
  const prompt = vi.fn(async () => ({ outcome: "accepted" }));
  const offer = Object.assign(new Event("beforeinstallprompt", { cancelable: true }), { prompt });
  window.dispatchEvent(offer);
  expect(offer.defaultPrevented).toBe(true);
  expect(home.state.value).toBe("offered");
  await home.take();
  await home.take();
  expect(prompt).toHaveBeenCalledTimes(1);
  expect(home.state.value).toBe("there");
});

test("an offer that is turned down leaves the menu", async () => {
  const window = fakeWindow(false);
  const home = new HomeScreen(window);
  const prompt = async () => ({ outcome: "dismissed" });
  window.dispatchEvent(Object.assign(new Event("beforeinstallprompt"), { prompt }));
  await home.take();
  expect(home.state.value).toBe("by-menu");
});

test("settings of before there was a choice of hand and colours stay as they are", () => {
  const kept = { weight: "kg", length: "in", talkback: "full" };
  expect(readSettings(JSON.stringify(kept))).toMatchObject({
    ...kept,
    hand: "right",
    lights: "system",
  });
});
