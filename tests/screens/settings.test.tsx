import { fireEvent, render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import { SettingsScreen } from "../../src/screens/settings/settings.tsx";
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
