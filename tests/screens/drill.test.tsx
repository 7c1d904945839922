import { fireEvent, render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import type { Drill } from "../../src/screens/app/voice.ts";
import { DrillScreen } from "../../src/screens/drill/drill.tsx";
import { fakeApp } from "./fake-app.ts";

test("whoever leaves before the ears are there is not recorded", async () => {
  const app = await fakeApp();
  app.plays.earsKept.value = { is: "kept", startsAlone: true };
  let come = (_: Drill) => {};
  const coming = new Promise<Drill>((done) => {
    come = done;
  });
  app.voice.drill = () => coming;
  const { unmount } = render(<DrillScreen app={app} />);
  fireEvent.click(screen.getByRole("button", { name: "Begin" }));
  unmount();
  await new Promise((done) => setTimeout(done, 50));
  let isRecording = false;
  come({
    start: () => {
      isRecording = true;
    },
  } as Drill);
  await coming;
  await new Promise((done) => setTimeout(done));
  expect(isRecording).toBe(false);
});

test("touched twice before the ears are there, it begins once", async () => {
  const app = await fakeApp();
  app.plays.earsKept.value = { is: "kept", startsAlone: true };
  let asked = 0;
  app.voice.drill = () => {
    asked += 1;
    return new Promise(() => {});
  };
  render(<DrillScreen app={app} />);
  const begin = screen.getByRole("button", { name: "Begin" });
  fireEvent.click(begin);
  await new Promise((done) => setTimeout(done));
  fireEvent.click(begin);
  expect(asked).toBe(1);
});

test("where it cannot be fetched, that is said, and it can be begun again", async () => {
  const app = await fakeApp();
  app.plays.earsKept.value = { is: "kept", startsAlone: true };
  app.voice.drill = () => Promise.reject(new Error("no signal"));
  render(<DrillScreen app={app} />);
  const begin = screen.getByRole<HTMLButtonElement>("button", { name: "Begin" });
  fireEvent.click(begin);
  await screen.findByText(/did not arrive whole/);
  expect(begin.disabled).toBe(false);
});
