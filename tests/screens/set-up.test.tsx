import { act, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { beforeEach, expect, test } from "vitest";
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

// Exact by the international yard and pound agreement of 1959.
test("weights and lengths are taken in the units that are set", async () => {
  enter("Most in one net (lb)", "60");
  enter("Most line above the float (cm)", "30");
  enter("Depth of the water (m)", "1,5");
  await waitFor(() => expect(plan().waterDepthMm).toBe(1500));
  expect(plan().netLimitG).toBeCloseTo(60 * 453.59237, 6);
  expect(plan().lashLimitMm).toBe(300);
  act(() => app.setSettings({ weight: "kg", length: "in" }));
  const field = await screen.findByLabelText<HTMLInputElement>("Most in one net (kg)");
  expect(field.value).toBe("27.22");
  enter("Most line above the float (in)", "10");
  await waitFor(() => expect(plan().lashLimitMm).toBeCloseTo(254, 6));
});

test.each(["many", "-3", "0"])("a limit of %s is not taken", async (text) => {
  enter("Most in one net (lb)", "60");
  await waitFor(() => expect(plan().netLimitG).toBeDefined());
  const before = plan();
  fireEvent.input(screen.getByLabelText("Most in one net (lb)"), { target: { value: text } });
  await Promise.resolve();
  enter("Most in one net (lb)", text);
  await waitFor(() =>
    expect(screen.getByLabelText<HTMLInputElement>("Most in one net (lb)").value).toBe("60"),
  );
  expect(plan()).toEqual(before);
});

test("a bait's limit is added, and taken away by emptying it", async () => {
  fireEvent.change(screen.getByLabelText("Add a limit for a bait"), {
    target: { value: "pellet" },
  });
  await screen.findByLabelText("Most pellet (lb)");
  enter("Most pellet (lb)", "4");
  await waitFor(() => expect(plan().baitLimitsG?.pellet).toBeCloseTo(4 * 453.59237, 6));
  enter("Most pellet (lb)", "");
  await waitFor(() => expect(plan().baitLimitsG).toBeUndefined());
});

test("a species of the angler's own is understood when it is said", async () => {
  const [species] = screen.getAllByLabelText("Name");
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
