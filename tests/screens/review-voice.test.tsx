/** The screen read back, and what "that" means to whoever speaks or types on Review. */
import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { expect, test } from "vitest";
import { Review } from "../../src/screens/review/review.tsx";
import "./patience.ts";
import { fakeApp, type Line } from "./fake-app.ts";

const OUNCE_G = 28.349523125;

async function open(...lines: Line[]) {
  const app = await fakeApp([[0, "start the session"], ...lines]);
  const { unmount } = render(<Review app={app} />);
  const aloud = () => app.asked.filter((one) => one.startsWith("say: "));
  return { app, unmount, aloud };
}

const touch = (name: string | RegExp) => fireEvent.click(screen.getByRole("button", { name }));
const readOut = () => fireEvent.click(screen.getByLabelText("Read it out to me"));

test("each question is read out as it comes up, after what became of the one before", async () => {
  const { app, aloud } = await open([10, "skimmer thirty"], [20, "two roach forty"], [30, "tench"]);
  expect(aloud()).toEqual([]);
  readOut();
  await waitFor(() =>
    expect(aloud()).toEqual(["say: Fish 1, skimmer, 30 centimetres, at 09:10. Right?"]),
  );
  await app.type("make that ten ounces");
  await waitFor(() => expect(aloud()).toHaveLength(2));
  expect(aloud()[1]).toMatch(
    /^say: Skimmer, 10 ounces.*\. Next\. Fish 2 to 3, 2 roach, .*at 09:20\. Right\?$/,
  );
  await app.type("scratch that");
  await waitFor(() => expect(aloud()[2]).toBe("say: Taken out. All looked at."));
  expect(app.session.value.count).toBe(2);
});

test("a yes settles what was asked", async () => {
  const { app } = await open([10, "skimmer thirty"]);
  await app.type("yes, that's right");
  await screen.findByText("All looked at.");
  expect(app.session.value.heardLines).toEqual([]);
});

test("“that” is the entry that is open, and nothing in particular once Review is left", async () => {
  const { app, unmount } = await open([10, "tench two pounds"], [20, "carp two pounds"]);
  touch(/^09:10/);
  await app.type("make that ten ounces");
  await screen.findByRole("button", { name: /^09:10 ?Tench, 10 ounces/ });
  touch(/^09:10/);
  await app.type("make that five pounds");
  await screen.findByRole("button", { name: /^09:20 ?Carp, 5 pounds/ });
  touch(/^09:10/);
  await screen.findByText("Save");
  unmount();
  await app.type("make that six pounds");
  expect(
    app.session.value.entries.flatMap(({ statement }) =>
      statement.kind === "fish" ? [Math.round((statement.weightG ?? 0) / OUNCE_G)] : [],
    ),
  ).toEqual([10, 96]);
});

test("a correction that fits nothing on the screen says so there", async () => {
  const { app } = await open([10, "feeding"], [20, "carp two pounds"]);
  touch(/^09:10/);
  await app.type("make that three pounds");
  await screen.findByText("There is nothing to correct.");
  expect(app.session.value.spokenG).toBeCloseTo(32 * OUNCE_G, 6);
});
