import { configure, fireEvent, render, screen, waitFor, within } from "@testing-library/preact";
import { beforeEach, expect, test, vi } from "vitest";
import type { EntryStatement, EventBody, Plan } from "../../src/log/event.ts";
import { SessionsScreen } from "../../src/screens/sessions/sessions.tsx";
import { event } from "../log/session-script.ts";
import { type FakeApp, fakeApp, MINUTE_MS } from "./fake-app.ts";

// Generous for a loaded machine; no test measures time.
configure({ asyncUtilTimeout: 20_000 });
vi.setConfig({ testTimeout: 60_000 });

let app: FakeApp;

const entry = (statement: EntryStatement): EventBody => ({ kind: "entry", statement });

/** Three hours from nine, with so many fish in each place. */
async function fished(id: string, day: Date, plan: Plan, shallow: number, deep: number) {
  const start = day.setHours(9, 0, 0, 0);
  const bodies: [minute: number, EventBody][] = [
    [0, { kind: "plan", plan }],
    [0, entry({ kind: "session", act: "start" })],
    [0, entry({ kind: "change", depthMm: 600, rig: "2" })],
    ...Array.from({ length: shallow }, (_, n): [number, EventBody] => [
      5 + n,
      entry({ kind: "fish", weightG: 453.59237 }),
    ]),
    [90, entry({ kind: "change", depthMm: 1800, rig: "1" })],
    ...Array.from({ length: deep }, (_, n): [number, EventBody] => [
      95 + n,
      entry({ kind: "fish", weightG: 453.59237 }),
    ]),
    [180, entry({ kind: "session", act: "stop" })],
  ];
  await app.store.put(
    bodies.map(([minute, body], n) =>
      event(n + 1, body, { id: `${id}-${n}`, session: id, at: start + minute * MINUTE_MS }),
    ),
  );
}

beforeEach(async () => {
  app = await fakeApp();
  const osier = { water: "Osier Lake", method: "match", peg: "17" } as const;
  await fished("may", new Date(2026, 4, 2), osier, 30, 2);
  await fished("june", new Date(2026, 5, 6), { ...osier, method: "practice" }, 25, 3);
  await fished("july", new Date(2026, 6, 4), { water: "Marram Water" }, 0, 4);
  location.hash = "#sessions";
});

const open = async () => {
  render(<SessionsScreen app={app} />);
  await screen.findByRole("heading", { name: "3 sessions" });
};
const days = () =>
  within(screen.getByRole("region", { name: /sessions?$/ }))
    .getAllByRole("heading", { level: 3 })
    .map(({ textContent }) => textContent);
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole("button", { name }));

test("an empty log has no list, and says so", async () => {
  app = await fakeApp();
  render(<SessionsScreen app={app} />);
  await screen.findByText(/No session is kept on this phone yet/);
  expect(screen.queryByLabelText("Water")).toBeNull();
});

test("sessions are listed with their figures, the newest first", async () => {
  await open();
  expect(days()).toEqual(["Saturday 4 July 2026", "Saturday 6 June 2026", "Saturday 2 May 2026"]);
  screen.getByText("32 lb from 32 fish in 3 h");
  screen.getByText("Osier Lake, peg 17 · Match");
});

test("they are found by water, month and kind", async () => {
  await open();
  const choose = (label: string, value: string) =>
    fireEvent.change(screen.getByLabelText(label), { target: { value } });
  choose("Water", "Osier Lake");
  await waitFor(() => expect(days()).toEqual(["Saturday 6 June 2026", "Saturday 2 May 2026"]));
  screen.getByRole("heading", { name: "2 of 3 sessions" });
  choose("Month", "4");
  await waitFor(() => expect(days()).toEqual(["Saturday 2 May 2026"]));
  choose("Kind", "practice");
  await screen.findByText("No session fits.");
  choose("Month", "");
  await waitFor(() => expect(days()).toEqual(["Saturday 6 June 2026"]));
});

test("one is opened and shown", async () => {
  await open();
  press("Open: Saturday 6 June 2026");
  await waitFor(() => expect(location.hash).toBe("#summary"));
  expect(app.asked).toEqual(["open june"]);
});

test("the sums follow what is found, with the hours behind each figure", async () => {
  await open();
  const sums = () => screen.getByRole("region", { name: "What they say together" });
  await waitFor(() => expect(sums().textContent).toContain("3 sessions, 9 h fished."));
  expect(sums().textContent).toContain("60 cm is best, with 99 in 100.");
  const picture = within(sums()).getByRole("img", { name: /^Fish an hour by depth/ });
  expect(picture.textContent).toContain("55 in 4 h 30 min, 3 sessions");
  fireEvent.change(screen.getByLabelText("Water"), { target: { value: "Marram Water" } });
  await waitFor(() => expect(sums().textContent).toContain("1 session, 3 h fished."));
  expect(sums().textContent).toContain("Too few fish to tell which is best.");
  fireEvent.click(within(sums()).getByLabelText("Rig"));
  await within(sums()).findByRole("img", { name: /^Fish an hour by rig/ });
});

test("one is deleted, gone from the store, and put back", async () => {
  await open();
  press("Delete: Saturday 6 June 2026");
  await screen.findByText("Saturday 6 June 2026 is deleted.");
  expect(days()).toEqual(["Saturday 4 July 2026", "Saturday 2 May 2026"]);
  expect(await app.store.session("june")).toEqual([]);
  const back = screen.getByRole("button", { name: "Put it back" });
  await waitFor(() => expect(document.activeElement).toBe(back));
  fireEvent.click(back);
  await waitFor(() => expect(days()).toHaveLength(3));
  expect((await app.store.session("june")).length).toBeGreaterThan(20);
  expect(screen.queryByText(/is deleted/)).toBeNull();
});

test("the session that runs is not deleted, and none is begun beside it", async () => {
  await app.type("start the session");
  render(<SessionsScreen app={app} />);
  await screen.findByRole("heading", { name: "4 sessions" });
  screen.getByText(/A session is running/);
  expect(screen.queryByRole("button", { name: "New session" })).toBeNull();
  const name = app.session.value.id;
  const rows = within(screen.getByRole("region", { name: "4 sessions" })).getAllByRole("listitem");
  const own = rows.find((row) => row.textContent?.includes("Open now"));
  fireEvent.click(within(own as HTMLElement).getByRole("button", { name: /^Delete/ }));
  await screen.findByText("End this session before it can be deleted.");
  expect((await app.store.session(name)).length).toBeGreaterThan(0);
});

test("two are held against each other on one scale", async () => {
  await open();
  press("Compare: Saturday 6 June 2026");
  await screen.findByText(/Choose another one/);
  press("Compare: Saturday 4 July 2026");
  await screen.findByRole("heading", { name: "Side by side" });
  const table = screen.getByRole("table", { name: "Both sessions in figures" });
  const figures = [...table.querySelectorAll("tbody tr")].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
  expect(figures[0]).toEqual(["Fished", "3 h", "3 h"]);
  expect(figures[1]).toEqual(["Fish", "28", "4"]);
  expect(figures[4]).toEqual(["An hour", "9.3", "too few"]);
  screen.getByText(/^Fish came faster on Saturday 6 June 2026 \(99 in 100\)\.$/);
  const climbs = await screen.findAllByRole("img", { name: /^Weight landed/ });
  const levels = climbs.map((climb) =>
    [...climb.querySelectorAll("text")]
      .map((text) => text.textContent)
      .filter((text) => /lb$/.test(text ?? "")),
  );
  expect(levels).toHaveLength(2);
  expect(levels[0]).toEqual(levels[1]);
  press("Back to the list");
  await screen.findByRole("heading", { name: "3 sessions" });
});

test("the next one starts like the last, or where the earlier ones point to", async () => {
  await app.store.remove("july");
  render(<SessionsScreen app={app} />);
  const next = await screen.findByRole("region", { name: "Where to start at Osier Lake" });
  expect(next.textContent).toMatch(
    /60 cm: \d+ fish an hour, .* over 3 h in 2 sessions\. 99 in 100/,
  );
  expect(next.textContent).toContain("Bait: too few fish to tell.");
  press("Start with 60 cm, rig 2");
  await waitFor(() => expect(location.hash).toBe("#live"));
  press("Start like last time");
  await waitFor(() => expect(app.asked).toHaveLength(2));
  const plan = { kind: "plan", plan: { water: "Osier Lake", method: "practice" } };
  const begun = (change: object) =>
    `begin with ${JSON.stringify([plan, entry(change as EntryStatement)])}`;
  expect(app.asked).toEqual([
    begun({ kind: "change", rig: "2", depthMm: 600 }),
    begun({ kind: "change", rig: "1", depthMm: 1800 }),
  ]);
});
