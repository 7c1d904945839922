import { act, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { expect, test } from "vitest";
import type { App } from "../../src/screens/app.ts";
import { SummaryScreen } from "../../src/screens/summary/summary.tsx";
import { fakeApp, type Line } from "./fake-app.ts";
import "./patience.ts";

const DAY: readonly Line[] = [
  [0, "start the session"],
  [1, "rig one, depth one metre"],
  [30, "carp, four pounds"],
  [40, "hook pulled"],
  [70, "rig two, depth half a metre"],
  [80, "F1, one pound eight"],
  [85, "roach"],
  [90, "new net"],
];

const region = (name: string) => screen.getByRole("region", { name }).textContent ?? "";
const rows = (table: string) =>
  [...screen.getByRole("table", { name: table }).querySelectorAll("tbody tr")].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );

/** The whole of it: its parts come one after the other. */
async function shown(app: App): Promise<void> {
  render(<SummaryScreen app={app} />);
  await screen.findByRole("region", { name: "Pass it on" });
}

test("before the start there is nothing to sum up", async () => {
  render(<SummaryScreen app={await fakeApp()} />);
  screen.getByText(/has not started yet/);
});

test("it sums the day up", async () => {
  const app = await fakeApp(DAY);
  await app.weigh(1, 6 * 453.59237);
  await shown(app);
  expect(region("In all")).toContain("5 lb 8 oz as spoken");
  expect(region("In all")).toContain("3 fish in 1 h 30 min of fishing");
  expect(region("In all")).toContain("1 without a weight");
  expect(rows("By species")).toEqual([
    ["carp", "1", "4 lb"],
    ["F1", "1", "1 lb 8 oz"],
    ["roach", "1", "not said"],
  ]);
  expect(region("Fish")).toContain("Best: carp, 4 lb");
  expect(region("Lost")).toContain("1 Hook pulled");
  expect(region("Set-ups")).toContain("rig 1, 1 m deep1 fish, 4 lb in 1 h 9 min");
  expect(region("Set-ups")).toContain("rig 2, 50 cm deep2 fish, 1 lb 8 oz in 20 min");
  expect(rows("Spoken against weighed")).toEqual([
    ["1", "3", "5 lb 8 oz", "6 lb"],
    ["2", "0", "0 lb", "not yet"],
  ]);
});

test("the pictures have their numbers beside them", async () => {
  await shown(await fakeApp(DAY));
  within(screen.getByRole("region", { name: "How it went" })).getByRole("img", {
    name: /^Weight landed from 09:00 to 10:30, rising to 5 lb 8 oz/,
  });
  expect(rows("Hour by hour")).toEqual([
    ["09:00", "1", "4 lb", "1"],
    ["10:00", "2", "1 lb 8 oz", "0"],
  ]);
  expect(region("How it went")).toContain("Too few fish to tell whether the pace turned.");
  screen.getByRole("img", { name: /^Depths over the day.*3 fish as dots and 1 loss as crosses/ });
  expect(rows("By depth")).toEqual([
    ["50 cm", "20 min", "2", "0"],
    ["1 m", "1 h 9 min", "1", "1"],
  ]);
  expect(region("How long bites took")).toContain("No drops were said.");
});

test("set-ups stand side by side by what the angler chooses, and few fish are said to be few", async () => {
  await shown(await fakeApp(DAY));
  expect(region("What worked")).toContain("Too few fish to tell which is best.");
  screen.getByRole("img", { name: /^Fish an hour by depth/ });
  fireEvent.click(
    within(screen.getByRole("group", { name: "Side by side by" })).getByLabelText("Rig"),
  );
  const picture = await screen.findByRole("img", { name: /^Fish an hour by rig/ });
  expect(picture.textContent).toContain("rig 22 fish");
  fireEvent.click(
    within(screen.getByRole("group", { name: "Side by side by" })).getByLabelText("Hook"),
  );
  await waitFor(() => expect(region("What worked")).toContain("No hook was said"));
});

test("it follows the log while it grows, and the units that are set", async () => {
  const app = await fakeApp(DAY);
  await shown(app);
  await act(() => app.type("carp, two pounds"));
  expect(region("In all")).toContain("7 lb 8 oz");
  act(() => app.setSettings({ weight: "kg" }));
  expect(region("In all")).toContain("3.40 kg");
});

test("what it came to stands there first; the rest comes once all of it is made", async () => {
  const app = await fakeApp(DAY);
  render(<SummaryScreen app={app} />);
  const parts = () => screen.getAllByRole("region").length;
  expect(parts()).toBe(1);
  const first = screen.getByRole("region", { name: "In all" });
  const made = new Set<number>();
  const seen = new Set<number>();
  const watch = new MutationObserver(() => {
    made.add(document.querySelectorAll("section").length);
    seen.add(parts());
  });
  watch.observe(document.body, { childList: true, subtree: true, attributes: true });
  await screen.findByRole("region", { name: "Pass it on" });
  await waitFor(() => expect(parts()).toBe(10));
  watch.disconnect();
  expect(screen.getByRole("region", { name: "In all" })).toBe(first);
  expect(made.size).toBeGreaterThan(5);
  expect([...seen].sort()).toEqual([1, 10]);
});
