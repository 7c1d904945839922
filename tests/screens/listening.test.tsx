import { act, fireEvent, render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import type { Hearing } from "../../src/screens/app.ts";
import { Ears } from "../../src/screens/live/ears.tsx";
import { Listening } from "../../src/screens/set-up/listening.tsx";
import { fakeApp } from "./fake-app.ts";

test("the ears are chosen, and kept with the settings", async () => {
  const app = await fakeApp();
  render(<Listening app={app} />);
  expect(screen.getByLabelText<HTMLInputElement>("Whichever is better").checked).toBe(true);
  fireEvent.click(screen.getByLabelText("Inside the app"));
  expect(app.settings.value.ears).toBe("offline");
});

test("where there is nothing to choose from, it says what there is", async () => {
  const app = await fakeApp();
  app.plays.webEars.value = "none";
  render(<Listening app={app} />);
  expect(screen.queryByText("Which ears listen")).toBeNull();
  screen.getByText("This browser has no speech recognition.");
  act(() => {
    app.plays.earsKept.value = { is: "impossible" };
  });
  screen.getByText("This browser cannot run ears inside the app.");
  screen.getByText(/Neither can be had in this browser/);
});

test("getting ready tells the size, the progress, what went wrong, and that it is done", async () => {
  const app = await fakeApp();
  const { earsKept } = app.plays;
  const becomes = (state: typeof earsKept.value) =>
    act(() => {
      earsKept.value = state;
    });
  render(<Listening app={app} />);
  becomes({ is: "absent", bytes: 4_300_000 });
  screen.getByText(/Fetch the ears inside the app once \(4\.3 MB\)/);
  fireEvent.click(screen.getByRole("button", { name: "Get ready" }));
  becomes({ is: "fetching", loaded: 1_000_000, total: 4_300_000 });
  expect(screen.getByRole<HTMLProgressElement>("progressbar").value).toBe(1_000_000);
  screen.getByText("Fetching: 1.0 MB of 4.3 MB");
  becomes({ is: "absent", bytes: 4_300_000, isPart: true, trouble: "The signal broke off." });
  expect(screen.getByRole("alert").textContent).toBe("The signal broke off.");
  fireEvent.click(screen.getByRole("button", { name: "Go on fetching" }));
  becomes({ is: "kept", startsAlone: true });
  screen.getByText("Ready: this phone hears without a signal.");
  fireEvent.click(screen.getByRole("button", { name: "Remove them" }));
  becomes({ is: "kept", startsAlone: false });
  screen.getByText(/this browser does not keep the app itself/);
  expect(app.asked).toEqual(["get ready", "get ready", "remove the ears"]);
});

test.each<[Hearing, string | RegExp, boolean]>([
  [{ is: "off", sendsSound: true }, /sends the sound to its maker/, true],
  [{ is: "off", sendsSound: false }, "Not listening", false],
  [{ is: "listening", kind: "web", sendsSound: true }, "By the browser, over the network", false],
  [{ is: "listening", kind: "web", sendsSound: false }, "By the browser, on this phone", false],
  [{ is: "listening", kind: "offline", sendsSound: false }, "Inside the app, on this phone", false],
  [{ is: "unavailable", sendsSound: false }, "Cannot listen here", true],
])("Live says which ears hear: %o", async (hearing, words, offers) => {
  const app = await fakeApp();
  app.plays.hearing.value = hearing;
  render(<Ears app={app} />);
  screen.getByText(words);
  const offer = screen.queryByRole("link", { name: "Use ears inside the app" });
  expect(offer?.getAttribute("href")).toBe(offers ? "#set-up" : undefined);
});
