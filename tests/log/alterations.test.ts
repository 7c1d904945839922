import { expect, test } from "vitest";
import { alterations } from "../../src/log/alterations.ts";
import { foldSession } from "../../src/log/fold.ts";
import { preview } from "../../src/log/preview.ts";
import { amend, entry, SESSION, weighed, withdraw } from "./session-script.ts";

const events = [
  entry(1, { kind: "change", rig: "1", depthMm: 500, bait: "corn" }),
  entry(2, { kind: "fish", species: "f1" }),
  entry(3, { kind: "change", depthByMm: 100 }),
  entry(4, { kind: "fish", species: "f1", count: 2 }),
  entry(5, { kind: "net", number: 2 }),
  entry(6, { kind: "fish", species: "carp" }),
];
const session = foldSession(SESSION, events);

const altered = (...bodies: Parameters<typeof preview>[1][number]["body"][]) =>
  alterations(
    session,
    preview(
      session,
      bodies.map((body, n) => ({ id: `draft${n}`, verdict: "log", body })),
    ),
  );

test("a corrected change moves every fish after it", () => {
  expect(altered({ kind: "amend", target: "e1", set: { depthMm: 400 } })).toEqual([
    { part: "depth", from: { depthMm: 500 }, to: { depthMm: 400 }, fish: [1] },
    { part: "depth", from: { depthMm: 600 }, to: { depthMm: 500 }, fish: [2, 3, 4] },
  ]);
});

test("a change taken out, and a net", () => {
  expect(altered({ kind: "withdraw", targets: ["e1"] })).toEqual([
    { part: "rig", from: { rig: "1" }, to: {}, fish: [1, 2, 3, 4] },
    { part: "depth", from: { depthMm: 500 }, to: {}, fish: [1] },
    { part: "bait", from: { bait: "corn" }, to: {}, fish: [1, 2, 3, 4] },
    { part: "depth", from: { depthMm: 600 }, to: {}, fish: [2, 3, 4] },
  ]);
  expect(altered({ kind: "withdraw", targets: ["e5"] })).toEqual([
    { part: "net", from: { net: 2 }, to: { net: 1 }, fish: [4] },
  ]);
});

test("nothing else is told of, and the session itself stays", () => {
  expect(altered({ kind: "amend", target: "e2", set: { species: "carp" } })).toEqual([]);
  expect(session.entries[1]?.statement).toEqual({ kind: "fish", species: "f1" });
});

test("a preview is what the session becomes", () => {
  const corrected = [...events, amend(7, "e3", { depthMm: 900 }), withdraw(8, "e2")];
  const before = foldSession(SESSION, corrected);
  const drafts = [
    { id: "e9", verdict: "log", body: { kind: "withdraw", targets: ["e8"] } } as const,
    // What was corrected before comes later than all entries.
    { id: "e10", verdict: "log", body: { kind: "amend", target: "e3", set: { depthMm: 800 } } },
  ];
  const again = amend(10, "e3", { depthMm: 800 });
  const after = foldSession(SESSION, [...corrected, withdraw(9, "e8"), again]);
  const entries = ({ entries: list, spokenG, count, net, setUp }: typeof after) => ({
    list: list.map(({ id, statement, setUp: own }) => ({ id, statement, own })),
    ...{ spokenG, count, net, setUp },
  });
  expect(entries(preview(before, drafts as never))).toEqual(entries(after));
});

test("what the scales said is a step that undo takes back, and a new one ends the way forward", () => {
  const weighing = [...events, weighed(7, 1, 900), weighed(8, 1, 950)];
  expect(foldSession(SESSION, weighing).corrections.map(({ id }) => id)).toEqual(["e7", "e8"]);
  const undone = foldSession(SESSION, [...weighing, withdraw(9, "e8")]);
  expect(undone.nets[0]?.weighedG).toBe(900);
  expect(undone.undone.map(({ id }) => id)).toEqual(["e9"]);
  const anew = foldSession(SESSION, [...weighing, withdraw(9, "e8"), weighed(10, 1, 990)]);
  expect(anew.undone).toEqual([]);
});
