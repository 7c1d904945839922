/** What can be done about one entry beside changing a field: split, join, move, see what it alters. */
import { fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { expect, test } from "vitest";
import { Review } from "../../src/screens/review/review.tsx";
import "./patience.ts";
import { fakeApp, type Line } from "./fake-app.ts";

const OUNCE_G = 28.349523125;

const touch = (name: string | RegExp) => fireEvent.click(screen.getByRole("button", { name }));
const choose = (label: string) =>
  fireEvent.click(screen.getByLabelText(label, { selector: "input" }));

async function open(...lines: Line[]) {
  const app = await fakeApp([[0, "start the session"], ...lines]);
  render(<Review app={app} />);
  return app;
}

const said = (app: Awaited<ReturnType<typeof open>>) =>
  app.session.value.entries.map(({ statement, fishNumber }) => [fishNumber, statement]);

test("three roach become one and two, each with a weight of its own, and undo makes them three", async () => {
  const app = await open([4, "three small roach"], [8, "carp two pounds"]);
  const before = said(app);
  touch(/^09:04/);
  touch("More to do");
  touch("Split into 2 and 1");
  await screen.findByRole("button", { name: /^09:04 ?Roach ?fish 3$/ });
  touch(/fish 3$/);
  touch("Weight up 1 oz");
  touch("Save");
  await waitFor(() =>
    expect(said(app).slice(1)).toMatchObject([
      [1, { species: "roach", count: 2 }],
      [3, { species: "roach", weightG: OUNCE_G }],
      [4, { species: "carp" }],
    ]),
  );
  touch("Undo");
  touch("Undo");
  await waitFor(() => expect(said(app)).toEqual(before));
});

test("an entry of several is told apart at one touch, or by how many are split off", async () => {
  const app = await open([4, "four small roach"]);
  touch(/^09:04/);
  touch("More to do");
  touch("How many to split off up 1");
  touch("How many to split off up 1");
  touch("Split into 1 and 3");
  await waitFor(() => expect(app.session.value.entries).toHaveLength(3));
  touch("Undo");
  await waitFor(() => expect(app.session.value.entries).toHaveLength(2));
  touch("Each on its own");
  await waitFor(() => expect(app.session.value.entries).toHaveLength(5));
  expect(app.session.value.count).toBe(4);
});

test("a fish that was logged twice, and a fish in two parts, become one", async () => {
  const app = await open([4, "skimmer"], [5, "skimmer ten ounces"], [6, "tench two pounds"]);
  touch(/^09:05/);
  touch("More to do");
  expect(screen.queryByRole("button", { name: /^Same as 09:06/ })).toBeNull();
  touch("Same as 09:04: Skimmer, 10 ounces");
  await waitFor(() => expect(app.session.value.count).toBe(2));
  expect(said(app)[1]).toMatchObject([1, { species: "skimmer", weightG: 10 * OUNCE_G }]);
});

test("fish of one species are counted together", async () => {
  const app = await open([4, "skimmer ten ounces"], [5, "skimmer twenty ounces"]);
  touch(/^09:05/);
  touch("More to do");
  touch("Count with 09:04: 2 skimmer, 15 ounces each");
  await waitFor(() => expect(app.session.value.entries).toHaveLength(2));
  expect(app.session.value.spokenG).toBeCloseTo(30 * OUNCE_G, 6);
});

test("which fish a change moves is told before it is kept", async () => {
  const app = await open(
    [1, "rig two, depth half a metre"],
    [4, "carp two pounds"],
    [5, "ten centimetres deeper"],
    [6, "three small roach"],
    [7, "tench two pounds"],
  );
  touch(/^09:01/);
  touch("Depth down 10 cm");
  const told = await screen.findByText("What this alters");
  const lines = within(told.parentElement as HTMLElement).getAllByRole("listitem");
  expect(lines.map((line) => line.textContent)).toEqual([
    "Fish 1: depth 40 cm, was 50 cm",
    "Fish 2 to 5: depth 50 cm, was 60 cm",
  ]);
  expect(app.session.value.setUp.depthMm).toBe(600);
  touch("Save");
  await waitFor(() => expect(app.session.value.setUp.depthMm).toBe(500));
});

test("a fish that is moved in time is told to have been caught on another set-up", async () => {
  await open([2, "carp two pounds"], [3, "depth half a metre"], [4, "tench two pounds"]);
  touch(/^09:02/);
  expect(screen.queryByText("What this alters")).toBeNull();
  touch(/^Put after 09:03/);
  screen.getByText("Fish 1: depth 50 cm, was not known");
});

test("a depth that was a step becomes one, and the other way about", async () => {
  const app = await open([1, "depth half a metre"]);
  touch(/^09:01/);
  touch("More fields");
  touch("Depth by down 10 cm");
  touch("Save");
  await waitFor(() => expect(said(app)[1]?.[1]).toMatchObject({ depthByMm: -100 }));
  expect(said(app)[1]?.[1]).not.toHaveProperty("depthMm");
});

test("a fish becomes a lost one, and keeps its species", async () => {
  const app = await open([4, "tench two pounds"]);
  touch(/^09:04/);
  touch("More fields");
  choose("Lost fish");
  choose("At the net");
  touch("Save");
  await waitFor(() =>
    expect(said(app)[1]).toEqual([undefined, { kind: "loss", cause: "net", species: "tench" }]),
  );
});

test("fields are cleared, and rare ones set", async () => {
  const app = await open([4, "tench about two pounds"]);
  touch(/^09:04/);
  touch("No weight");
  choose("About");
  touch("More fields");
  choose("Foul hooked");
  touch("Save");
  await waitFor(() => expect(said(app)[1]?.[1]).toMatchObject({ species: "tench", foul: true }));
  expect(said(app)[1]?.[1]).not.toHaveProperty("weightG");
  expect(said(app)[1]?.[1]).not.toHaveProperty("approx");
});

test("the history tells what was heard and what was changed, by whom and how", async () => {
  const app = await open([4, "roach thirty", "roach thirteen"], [6, "make that ten ounces"]);
  const [, entry] = app.session.value.entries;
  if (entry)
    await app.correct(entry, { ...entry.statement, species: "rudd" } as never, entry.at - 60_000);
  touch(/^09:03/);
  touch("More to do");
  const lines = within(screen.getByText("History").parentElement as HTMLElement).getAllByRole(
    "listitem",
  );
  expect(lines.map((line) => line.textContent?.replace(/ \(phone .{4}\)$/, ""))).toEqual([
    "09:04 Heard by the browser’s ears: “roach thirty”, read as Roach, 30 centimetres",
    "09:06 Weight: 10 oz, was not said; said: “make that ten ounces”",
    "09:06 Species: rudd, was roach; Time set to 09:03; by touch",
    "09:06 Found right; by touch",
  ]);
});
