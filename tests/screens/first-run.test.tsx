import { act, fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test } from "vitest";
import { FirstRun } from "../../src/screens/first-run/first-run.tsx";
import { Shell } from "../../src/screens/shell.tsx";
import { fakeApp } from "./fake-app.ts";

beforeEach(() => {
  location.hash = "";
});

afterEach(() => {
  location.hash = "";
});

const next = () => fireEvent.click(screen.getByRole("button", { name: "Next" }));

test("they come by themselves on a phone that is new to the app, and only there", async () => {
  const app = await fakeApp();
  app.plays.isNew.value = true;
  const { unmount } = render(<Shell app={app} />);
  await screen.findByRole("heading", { level: 1, name: "First steps" });
  await waitFor(() => expect(app.asked).toEqual(["practise"]));
  unmount();
  await waitFor(() => expect(app.asked).toEqual(["practise", "stop practising"]));
  app.plays.isNew.value = false;
  render(<Shell app={app} />);
  screen.getByRole("main", { name: "Live" });
});

test("an address that names a screen is not led away from it", async () => {
  const app = await fakeApp();
  app.plays.isNew.value = true;
  location.hash = "#summary";
  render(<Shell app={app} />);
  await screen.findByRole("heading", { level: 1, name: "Summary" });
  expect(app.asked).toEqual([]);
});

test("a phrase is typed and seen understood, put right, and an answer heard", async () => {
  const app = await fakeApp();
  render(<FirstRun app={app} />);
  screen.getByText("Step 1 of 3");
  screen.getByText("“F1, two pounds eight”");
  await act(() => app.type("F1, two pounds eight"));
  screen.getByText("F1, 2 pounds 8 ounces");
  next();
  expect(screen.queryByText("F1, 2 pounds 8 ounces")).toBeNull();
  screen.getByText("“make that three pounds”");
  await act(() => app.type("make that three pounds"));
  screen.getByText("Understood");
  expect(app.session.value.spokenG).toBeCloseTo(3 * 453.59237, 6);
  next();
  fireEvent.click(screen.getByRole("button", { name: "Let me hear it" }));
  await screen.findByText(/Turn the volume up/);
  expect(app.asked).toContain("say: Three pounds from one fish.");
  screen.getByRole("link", { name: "Go to the water" });
});

test("talk is told from a phrase", async () => {
  const app = await fakeApp();
  render(<FirstRun app={app} />);
  await act(() => app.type("that was a lovely fish he had"));
  screen.getByText(/taken for talk/);
});

test("they say where sound may go, and the way to ears that send nothing, before listening", async () => {
  const app = await fakeApp();
  render(<FirstRun app={app} />);
  screen.getByText(/may send the sound to its maker/);
  screen.getByRole("link", { name: "make them ready" });
  act(() => {
    app.plays.hearing.value = { is: "off", sendsSound: false };
  });
  expect(screen.queryByText(/may send the sound to its maker/)).toBeNull();
});

test("a microphone that is refused says what to do, and typing goes on", async () => {
  const app = await fakeApp();
  render(<FirstRun app={app} />);
  act(() => {
    app.plays.hearing.value = {
      is: "refused",
      sendsSound: true,
      trouble: { what: "The microphone is shut.", todo: "Open it." },
    };
  });
  screen.getByText("The microphone is shut.");
  screen.getByLabelText(/Type a phrase/);
});

test("where there is no voice they say so", async () => {
  const app = await fakeApp();
  app.home.tryVoice = async () => false;
  render(<FirstRun app={app} />);
  next();
  next();
  fireEvent.click(screen.getByRole("button", { name: "Let me hear it" }));
  await screen.findByText(/This browser has no voice/);
});

test("a running session is not left for them", async () => {
  const app = await fakeApp([[0, "start the session"]]);
  render(<FirstRun app={app} />);
  screen.getByRole("link", { name: "Back to the session" });
  expect(app.asked).toEqual([]);
});
