import { act, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { SetUpScreen } from "../../src/screens/set-up/set-up.tsx";
import { type FakeApp, fakeApp } from "./fake-app.ts";

let app: FakeApp;

beforeEach(async () => {
  app = await fakeApp([[0, "start the session"]]);
  render(<SetUpScreen app={app} />);
});

const enter = (label: string, value: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value } });
const plan = () => app.session.value.plan;

test("water, peg and kind of session are kept with the session", async () => {
  enter("Water", "Osier Lake");
  enter("Peg", "17");
  fireEvent.click(screen.getByLabelText("Match"));
  await waitFor(() => expect(plan()).toEqual({ water: "Osier Lake", peg: "17", method: "match" }));
  enter("Water", "");
  await waitFor(() => expect(plan().water).toBeUndefined());
});

test("an end by the clock is the next such time after the start", async () => {
  enter("Ends at", "15:30");
  await waitFor(() => expect(plan().endsAt).toBe(new Date(2026, 5, 6, 15, 30).getTime()));
});

const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));

// Exact by the international yard and pound agreement of 1959.
test("weights and lengths are stepped in the units that are set, and can be taken away", async () => {
  press("Net limit up 10 lb");
  await waitFor(() => expect(plan().netLimitG).toBeCloseTo(10 * 453.59237, 6));
  press("Net limit up 1 lb");
  await waitFor(() => expect(plan().netLimitG).toBeCloseTo(11 * 453.59237, 6));
  press("Limit of line above the float up 10 cm");
  press("Depth of the water up ½ m");
  await waitFor(() => expect(plan().waterDepthMm).toBe(500));
  expect(plan().lashLimitMm).toBe(100);
  act(() => app.setSettings({ weight: "kg", length: "in" }));
  await screen.findByText("4.99 kg");
  press("Limit of line above the float up 1 in");
  await waitFor(() => expect(plan().lashLimitMm).toBeCloseTo(125.4, 6));
  press("No net limit");
  await waitFor(() => expect(plan().netLimitG).toBeUndefined());
});

test("no press takes a limit down to nothing", async () => {
  press("Net limit up 1 lb");
  await waitFor(() => expect(plan().netLimitG).toBeCloseTo(453.59237, 6));
  press("Net limit down 10 lb");
  press("Number of nets down 1");
  await waitFor(() => expect(plan().netsAllowed).toBe(1));
  expect(plan().netLimitG).toBeCloseTo(453.59237, 6);
});

test("a bait's limit is added, stepped and taken away", async () => {
  enter("Add a limit for a bait", "pellet");
  await waitFor(() => expect(plan().baitLimitsG).toEqual({ pellet: 1000 }));
  act(() => app.setSettings({ weight: "kg" }));
  press("Limit of pellet up ½ kg");
  await waitFor(() => expect(plan().baitLimitsG).toEqual({ pellet: 1500 }));
  press("No limit of pellet");
  await waitFor(() => expect(plan().baitLimitsG).toBeUndefined());
});

test("a bait that is not allowed is named, and allowed again", async () => {
  enter("Add a bait that is not allowed", "bread");
  await waitFor(() => expect(plan().baitsBanned).toEqual(["bread"]));
  press("Allow bread");
  await waitFor(() => expect(plan().baitsBanned).toBeUndefined());
});

test("a start by the clock is today's, though it is past", async () => {
  enter("Starts at", "08:30");
  await waitFor(() => expect(plan().startsAt).toBe(new Date(2026, 5, 6, 8, 30).getTime()));
});

describe("a rig", () => {
  const rig = () => plan().rigs?.[0];
  beforeEach(async () => {
    press("Add a rig");
    await waitFor(() => expect(plan().rigs).toEqual([{ name: "1", shots: [] }]));
  });

  test("has a depth, a float and shot, and says whether it floats", async () => {
    press("Depth up 10 cm");
    await waitFor(() => expect(rig()?.depthMm).toBe(100));
    enter("Float", "4x12");
    // What a 4x12 carries, from memory: common practice, no source.
    await waitFor(() => expect(rig()?.float).toEqual({ label: "4x12", lower: 0.15, upper: 0.2 }));
    await screen.findByText("Rig 1. It floats.");
    enter("Add shot", "8");
    await waitFor(() => expect(rig()?.shots).toEqual([{ size: "8", count: 1 }]));
    press("No. 8 up 1");
    await waitFor(() => expect(rig()?.shots).toEqual([{ size: "8", count: 2 }]));
    press("No. 8 up 1");
    await screen.findByText("Rig 1. It floats or sinks by the maker: try it in the margin.");
    press("No. 8 up 1");
    await screen.findByText("Rig 1. It sinks: take shot off, or take a bigger float.");
    expect(screen.getByText(/^0\.24 to 0\.26 g of shot/)).toBeTruthy();
  });

  test("loses nothing to fast thumbs", async () => {
    enter("Float", "4x14");
    await screen.findByText("Rig 1. It floats.");
    enter("Add shot", "8");
    await screen.findByRole("button", { name: "No. 8 up 1" });
    press("No. 8 up 1");
    await screen.findByText("2", { selector: "output" });
    press("No. 8 up 1");
    await waitFor(() => expect(rig()?.shots).toEqual([{ size: "8", count: 3 }]));
    expect(rig()?.float?.label).toBe("4x14");
  });

  test("is named, and taken out again", async () => {
    const name = screen
      .getAllByLabelText("Name")
      .find((one) => (one as HTMLInputElement).value === "1");
    if (!name) throw new Error("No field.");
    fireEvent.change(name, { target: { value: "dobber" } });
    await screen.findByText(/^dobber\. /);
    press("Add a rig");
    await waitFor(() => expect(plan().rigs?.map((one) => one.name)).toEqual(["dobber", "1"]));
    press("Take out dobber");
    await waitFor(() => expect(plan().rigs?.map((one) => one.name)).toEqual(["1"]));
  });
});

test("a bait's fall is worked out for a pellet, and kept with it", async () => {
  enter("Bait to time", "pellet");
  const take = await screen.findByRole("button", { name: "Take this" });
  fireEvent.click(take);
  // By hand: 6 mm of 1,150 kg/m³ in water of 15 °C at Reynolds 840, where Schiller and Naumann's drag
  // is 0.466: v² = 4/3 · 9.80665 · 0.006 · (1150 / 999.1 − 1) / 0.466.
  await waitFor(() => expect(plan().fallSpeeds?.pellet).toBeCloseTo(0.1595, 3));
  press("Take out pellet");
  await waitFor(() => expect(plan().fallSpeeds).toBeUndefined());
});

test("a bait's fall is timed, and a slip of the thumb is not", async () => {
  const clock = vi.spyOn(performance, "now");
  enter("Bait to time", "corn");
  clock.mockReturnValue(10_000);
  fireEvent.click(await screen.findByRole("button", { name: "It is in: start" }));
  clock.mockReturnValue(10_100);
  fireEvent.click(await screen.findByRole("button", { name: "It is down: stop" }));
  await screen.findByText("That was too quick to time.");
  fireEvent.click(await screen.findByRole("button", { name: "It is in: start" }));
  clock.mockReturnValue(14_100);
  fireEvent.click(await screen.findByRole("button", { name: "It is down: stop" }));
  // Half a metre in four seconds.
  await waitFor(() => expect(plan().fallSpeeds).toEqual({ corn: 0.125 }));
  clock.mockRestore();
});

test("a reminder to feed is set and switched off by pressing", async () => {
  press("Every up 1 min");
  await waitFor(() =>
    expect(app.session.value.reminder).toMatchObject({ everyMs: 60_000, about: "feed" }),
  );
  press("Every down 1 min");
  await waitFor(() => expect(app.session.value.reminder).toBeUndefined());
});

test("a species of the angler's own is understood when it is said", async () => {
  const own = screen.getByRole("heading", { name: "Words of your own" }).closest("section");
  const [species] = within(own as HTMLElement).getAllByLabelText("Name");
  const [spoken] = screen.getAllByLabelText("Also said");
  if (!species || !spoken) throw new Error("No fields.");
  fireEvent.change(species, { target: { value: "brass carp" } });
  fireEvent.change(spoken, { target: { value: "brassy, brass one" } });
  const [sounds] = screen.getAllByLabelText("Sounds like");
  fireEvent.change(sounds as HTMLElement, { target: { value: "grass carp" } });
  const list = within(species.closest("section") as HTMLElement);
  await waitFor(() =>
    expect(list.getByRole<HTMLButtonElement>("button", { name: "Add" }).disabled).toBe(false),
  );
  fireEvent.click(list.getByRole("button", { name: "Add" }));
  await screen.findByText("brass carp");
  expect(plan().ownSpecies).toEqual([
    { name: "brass carp", spoken: ["brassy", "brass one"], soundsLike: "grass carp" },
  ]);
  await app.type("brassy two pounds");
  expect(app.session.value.entries.at(-1)?.statement).toMatchObject({ species: "brass carp" });
  fireEvent.click(screen.getByRole("button", { name: "Take out brass carp" }));
  await waitFor(() => expect(plan().ownSpecies).toEqual([]));
});
