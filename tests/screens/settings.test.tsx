import { act, fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { expect, test } from "vitest";
import { SettingsScreen } from "../../src/screens/settings/settings.tsx";
import { Shell } from "../../src/screens/shell.tsx";
import { fakeApp } from "./fake-app.ts";

const enter = (label: string, value: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value } });

test("units, talking back and the call word are kept on the phone, not in the log", async () => {
  const app = await fakeApp([[0, "start the session"]]);
  const before = app.session.value;
  render(<SettingsScreen app={app} />);
  fireEvent.click(screen.getByLabelText("Kilos"));
  fireEvent.click(screen.getByLabelText("Inches"));
  fireEvent.click(screen.getByLabelText("Tones only"));
  enter("Call word", "scribe");
  expect(app.settings.value).toMatchObject({
    weight: "kg",
    length: "in",
    talkback: "tones",
    callWord: "scribe",
  });
  enter("Call word", "");
  expect(app.settings.value.callWord).toBeUndefined();
  expect(app.session.value).toBe(before);
});

test("the screens are laid out for the chosen hand, in the chosen colours", async () => {
  const app = await fakeApp();
  location.hash = "#settings";
  render(<Shell app={app} />);
  fireEvent.click(await screen.findByLabelText("Left"));
  fireEvent.click(screen.getByLabelText("Dark"));
  await waitFor(() =>
    expect(document.documentElement.dataset).toMatchObject({ hand: "left", lights: "dark" }),
  );
  location.hash = "";
});

test("whether the browser keeps the log is told in words, and it can be asked to", async () => {
  const app = await fakeApp();
  app.plays.storage.value = "may-go";
  render(<SettingsScreen app={app} />);
  screen.getByText(/may clear it when room gets short/);
  screen.getByText(/seven days of use/);
  fireEvent.click(screen.getByRole("button", { name: "Ask it to keep the log" }));
  expect(app.asked).toEqual(["ask to keep"]);
  act(() => {
    app.plays.storage.value = "kept";
  });
  screen.getByText(/has promised to keep the log/);
  expect(screen.queryByRole("button", { name: "Ask it to keep the log" })).toBeNull();
});

test("it is put on the home screen at a touch where the browser offers that", async () => {
  const app = await fakeApp();
  render(<SettingsScreen app={app} />);
  screen.getByText(/In the browser’s menu/);
  act(() => {
    app.plays.homeScreen.value = "offered";
  });
  fireEvent.click(screen.getByRole("button", { name: "Put it on the home screen" }));
  expect(app.asked).toEqual(["put on the home screen"]);
  act(() => {
    app.plays.homeScreen.value = "there";
  });
  screen.getByText(/The app is on the home screen/);
});
