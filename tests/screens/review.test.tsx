import { fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import * as v from "valibot";
import { expect, test } from "vitest";
import { statementSchema } from "../../grammar/statement.ts";
import { Review } from "../../src/screens/review/review.tsx";
import "./patience.ts";
import { fakeApp, type Line } from "./fake-app.ts";

/** Doubtful: thirty what? */
const DOUBTFUL: Line = [10, "roach thirty", "roach thirteen"];
const CHATTER: Line = [12, "that was a lovely fish he lost"];
const CARP: Line = [14, "carp, two pounds"];

const part = (name: RegExp) => within(screen.getByRole("region", { name }));
const touch = (name: string | RegExp, within = screen) =>
  fireEvent.click((within as typeof screen).getByRole("button", { name }));
const fish = (app: Awaited<ReturnType<typeof fakeApp>>) =>
  app.session.value.entries.flatMap(({ statement }) =>
    statement.kind === "fish" ? [statement] : [],
  );

async function open(...lines: Line[]) {
  const app = await fakeApp([[0, "start the session"], ...lines]);
  render(<Review app={app} />);
  return app;
}

test("what is marked stands first, with what was heard and its alternatives", async () => {
  await open(CARP, DOUBTFUL);
  expect(screen.getAllByRole("heading", { level: 2 })[0]?.textContent).toBe("To look at");
  screen.getByText("1 left");
  const marked = part(/^To look at/);
  marked.getByText(/Heard: “roach thirty”, or “roach thirteen”/);
  marked.getByRole("button", { name: "Roach, 13 ounces" });
});

test("one touch takes another reading, and the mark is off", async () => {
  const app = await open(DOUBTFUL);
  touch("Roach, 13 ounces", part(/^To look at/) as unknown as typeof screen);
  await screen.findByText("All looked at.");
  expect(fish(app)).toMatchObject([{ species: "roach", weightG: 13 * 28.349523125 }]);
});

test("one touch confirms it as it is", async () => {
  const app = await open(DOUBTFUL);
  const before = fish(app);
  touch("Right as it is");
  await screen.findByText("All looked at.");
  expect(fish(app)).toEqual(before);
});

test("one at a time: the next comes by itself, with what was said before and after", async () => {
  const app = await open(CARP, [16, "roach forty"], [18, "feeding"], [20, "tench thirty"]);
  screen.getByText("2 left");
  expect(screen.getAllByRole("button", { name: "Right as it is" })).toHaveLength(1);
  const card = part(/^To look at/);
  expect(card.getByText("Before").nextSibling?.textContent).toBe("09:14 Carp, 2 pounds");
  expect(card.getByText("After").nextSibling?.textContent).toMatch(/^09:18 Fed/);
  screen.getByRole("button", { name: "Right as it is" }).focus();
  touch("Right as it is");
  await part(/^To look at/).findByText(/09:20 Tench/);
  screen.getByText("1 left");
  await waitFor(() => expect(document.activeElement?.textContent).toBe("To look at"));
  touch("Right as it is");
  await screen.findByText("All looked at.");
  expect(app.session.value.entries.map(({ verdict }) => verdict)).not.toContain("check");
});

test("what is put off waits behind the others", async () => {
  await open(DOUBTFUL, [16, "roach forty"], [20, "tench thirty"]);
  const time = () =>
    part(/^To look at/)
      .getByRole("heading", { level: 3 })
      .textContent?.slice(0, 5);
  expect(time()).toBe("09:10");
  touch("Later");
  expect(time()).toBe("09:16");
  touch("Later");
  expect(time()).toBe("09:20");
  touch("Later");
  expect(time()).toBe("09:10");
  touch("Right as it is");
  await waitFor(() => expect(time()).toBe("09:16"));
});

test("what sounds alike is offered though the ears did not guess it", async () => {
  const app = await open([10, "skimmer fifteen ounces"]);
  touch(/Skimmer, 15 ounces/);
  touch("Skimmer, 50 ounces");
  await waitFor(() => expect(fish(app)[0]?.weightG).toBeCloseTo(50 * 28.349523125, 6));
});

test("one touch takes it out, and another brings it back", async () => {
  const app = await open(DOUBTFUL);
  screen.getByRole("button", { name: "Take out" }).focus();
  touch("Take out");
  await screen.findByText("Taken out (1)");
  await waitFor(() => expect(document.activeElement?.textContent).toBe("Review"));
  expect(fish(app)).toEqual([]);
  touch(/^Bring back Roach/);
  await waitFor(() => expect(fish(app)).toHaveLength(1));
});

test("three touches put a weight right, and undo and redo go back and forth", async () => {
  const app = await open(CARP);
  touch(/Carp, 2 pounds/);
  touch("Weight up 1 lb");
  touch("Save");
  await screen.findByRole("button", { name: /Carp, 3 pounds/ });
  expect(fish(app)[0]?.weightG).toBeCloseTo(3 * 453.59237, 6);
  touch("Undo");
  await screen.findByRole("button", { name: /Carp, 2 pounds/ });
  touch("Redo");
  await screen.findByRole("button", { name: /Carp, 3 pounds/ });
});

test("three touches put a species right", async () => {
  const app = await open(CARP);
  touch(/Carp, 2 pounds/);
  fireEvent.click(screen.getByLabelText("roach", { selector: "input" }));
  touch("Save");
  await waitFor(() => expect(fish(app)[0]?.species).toBe("roach"));
  expect(document.activeElement).toBe(screen.getByRole("button", { name: /Roach, 2 pounds/ }));
});

test("nothing is written until it is saved", async () => {
  const app = await open(CARP);
  const before = app.session.value;
  touch(/Carp, 2 pounds/);
  touch("Weight up 1 lb");
  touch("Leave it");
  expect(app.session.value).toBe(before);
  expect(screen.queryByRole("button", { name: "Save" })).toBeNull();
});

test("a fish caught in inches and kilos is stepped in them", async () => {
  await open([5, "carp, one kilo, sixteen inches"]);
  touch(/Carp, 1 kilo, 16 inches/);
  screen.getByRole("button", { name: "Weight up 50 g" });
  screen.getByRole("button", { name: "Length up 1 in" });
});

test("an entry can be moved in time", async () => {
  const app = await open(CARP);
  const at = app.session.value.entries.at(-1)?.at ?? 0;
  touch(/Carp, 2 pounds/);
  touch("Time down 10 min");
  touch("Save");
  await waitFor(() => expect(app.session.value.entries.at(-1)?.at).toBe(at - 600_000));
});

test.each([
  [
    "lost one",
    /^09:05 ?Lost one/,
    () => fireEvent.click(screen.getByLabelText("Snapped")),
    { cause: "snapped" },
  ],
  [
    "bite",
    /^09:05 ?Bite/,
    () => fireEvent.click(screen.getByLabelText("Liner")),
    { sort: "liner" },
  ],
  ["fed twice", /^09:05 ?Fed/, () => touch("Times up 1"), { times: 3 }],
  ["depth half a metre", /^09:05 ?Depth/, () => touch("Depth down 10 cm"), { depthMm: 400 }],
  [
    "ten centimetres shallower",
    /^09:05 ?10 cent/,
    () => touch("Depth by down 10 cm"),
    { depthByMm: -200 },
  ],
  ["net three", /^09:05 ?Net 3/, () => touch("Net down 1"), { number: 2 }],
  ["water eleven degrees", /^09:05 ?Water/, () => touch("Water temperature up 1°"), { waterC: 12 }],
  [
    "taking a break",
    /^09:05 ?Taking/,
    () => fireEvent.click(screen.getByLabelText("All out")),
    { act: "stop" },
  ],
  [
    "nudge me every three minutes",
    /^09:05 ?Nudge/,
    () => touch("Every up 1 min"),
    { everyMs: 240_000 },
  ],
] as const)("every kind is corrected by touch: %s", async (said, row, correct, wanted) => {
  const app = await open([5, said]);
  touch(row);
  correct();
  touch("Save");
  await waitFor(() => expect(app.session.value.entries.at(-1)?.statement).toMatchObject(wanted));
});

test("a line that was not meant for the log becomes an entry at one touch", async () => {
  const app = await fakeApp();
  app.setSettings({ callWord: "scribe" });
  await app.type("tench, four pounds");
  expect(app.session.value.entries).toEqual([]);
  render(<Review app={app} />);
  touch("Log: Tench, 4 pounds");
  await waitFor(() => expect(fish(app)).toMatchObject([{ species: "tench" }]));
  expect(app.session.value.heardLines).toEqual([]);
});

test("talk that held something after all is entered by touch, at its own time", async () => {
  const app = await open(CHATTER);
  const at = app.session.value.heardLines[0]?.at;
  touch("It was something else");
  const line = part(/^Heard, not logged/) as unknown as typeof screen;
  touch("Lost fish", line);
  fireEvent.click(screen.getByLabelText("Snapped"));
  touch("Add: lost fish");
  await waitFor(() => expect(app.session.value.heardLines).toEqual([]));
  expect(app.session.value.entries.at(-1)).toMatchObject({
    at,
    statement: { kind: "loss", cause: "snapped" },
  });
});

test("a line that says nothing readable is kept as a note at one touch", async () => {
  const app = await open([12, "they reckon the far bank is better"]);
  touch("Keep as a note");
  await waitFor(() =>
    expect(app.session.value.entries.at(-1)?.statement).toEqual({
      kind: "note",
      text: "they reckon the far bank is better",
    }),
  );
});

test("a line longer than any note is kept as far as a note goes", async () => {
  const app = await open([12, "they reckon the far bank is better ".repeat(100)]);
  touch("Keep as a note");
  await waitFor(() => {
    const last = app.session.value.entries.at(-1)?.statement;
    expect(last?.kind).toBe("note");
    expect(v.is(statementSchema, last)).toBe(true);
  });
});

test("of ever so many guesses, as a file may hold, a few are shown and read", async () => {
  const app = await open([
    10,
    "roach thirty",
    ...Array.from({ length: 500 }, (_, n) => `roach ${n}`),
  ]);
  const read: number[] = [];
  const { readings } = app;
  app.readings = (heard) => {
    read.push(heard.alternatives?.length ?? 0);
    return readings(heard);
  };
  render(<Review app={app} />);
  expect(screen.getAllByText(/Heard:/)[0]?.textContent).not.toContain("roach 9");
  expect(Math.max(...read)).toBeLessThan(40);
});

test("an entry that was never said is added", async () => {
  const app = await open();
  touch("Fish");
  touch("Weight up 1 lb");
  touch("Add: fish");
  await waitFor(() => expect(fish(app)).toHaveLength(1));
  expect(fish(app)[0]?.weightG).toBeCloseTo(453.59237, 6);
});

test("a note without words cannot be added", async () => {
  await open();
  touch("Note");
  expect(screen.getByRole<HTMLButtonElement>("button", { name: "Add: note" }).disabled).toBe(true);
});

test("what the scales said is entered net by net", async () => {
  const entering = () =>
    screen.getByRole<HTMLButtonElement>("button", { name: "Enter net 1" }).disabled;
  const app = await open(CARP, [20, "new net"]);
  const field = screen.getByLabelText("The scales said, net 1, lb");
  fireEvent.input(field, { target: { value: "2" } });
  fireEvent.input(screen.getByLabelText("The scales said, net 1, oz"), { target: { value: "4" } });
  await waitFor(() => expect(entering()).toBe(false));
  touch("Enter net 1");
  await part(/^Weigh-in/).findByText("2 lb 4 oz");
  expect(app.session.value.nets[0]?.weighedG).toBeCloseTo(2.25 * 453.59237, 6);
  touch("Net 1 was not weighed");
  await waitFor(() => expect(app.session.value.nets[0]).not.toHaveProperty("weighedG"));
});

test("nothing but a number is taken from the scales", async () => {
  await open(CARP);
  fireEvent.input(screen.getByLabelText("The scales said, net 1, lb"), {
    target: { value: "two" },
  });
  expect(screen.getByRole<HTMLButtonElement>("button", { name: "Enter net 1" }).disabled).toBe(
    true,
  );
});
