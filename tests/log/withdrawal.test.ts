import { expect, test } from "vitest";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { amend, entry, event, SESSION, settle, withdraw } from "./session-script.ts";

const fold = (...events: LogEvent[]) => foldSession(SESSION, events);
const ids = (list: readonly { id: string }[]) => list.map((one) => one.id);
const fish = (seq: number, weightG?: number) =>
  entry(seq, { kind: "fish", ...(weightG !== undefined && { weightG }) });

test("withdrawals take entries out of every sum and keep them to bring back, by when they were taken", () => {
  const session = fold(
    fish(1, 100),
    fish(2, 200),
    fish(3, 300),
    withdraw(4, "e2"),
    withdraw(5, "e1"),
  );
  expect(session).toMatchObject({ count: 1, spokenG: 300 });
  expect(session.entries.map((one) => [one.id, one.fishNumber])).toEqual([["e3", 1]]);
  expect(session.withdrawn.map((one) => one.id)).toEqual(["e2", "e1"]);
  expect(session.withdrawn[0]?.history.map((one) => one.id)).toEqual(["e2", "e4"]);
});

test("undo and redo follow each other without end", () => {
  const events = [fish(1, 900), withdraw(2, "e1")];
  for (let seq = 3; seq < 20_003; seq++) events.push(withdraw(seq, `e${seq - 1}`));
  expect(fold(...events).count).toBe(0);
  expect(fold(...events, withdraw(20_003, "e20002")).count).toBe(1);
});

test("of one withdrawal, two undoings must both be undone, as of two phones that undo the same", () => {
  const events = [fish(1, 900), withdraw(2, "e1"), withdraw(3, "e2"), withdraw(4, "e2")];
  expect(fold(...events, withdraw(5, "e3")).count).toBe(1);
  expect(fold(...events, withdraw(5, "e4")).count).toBe(1);
  expect(fold(...events, withdraw(5, "e3"), withdraw(6, "e4")).count).toBe(0);
});

test("what undo and redo are about", () => {
  const events = [
    fish(1, 900),
    amend(2, "e1", { weightG: 1000 }),
    amend(3, "e1", { weightG: 1100 }),
  ];
  const states = [
    [["e2", "e3"], [], 1100],
    [["e2"], ["e4"], 1000],
    [[], ["e4", "e5"], 900],
    [["e2"], ["e4"], 1000],
    [["e2", "e3"], [], 1100],
    [["e2"], ["e8"], 1000],
  ];
  const steps = [
    withdraw(4, "e3"),
    withdraw(5, "e2"),
    withdraw(6, "e5"),
    withdraw(7, "e4"),
    withdraw(8, "e3"),
  ];
  states.forEach(([corrections, undone, grams], i) => {
    const session = fold(...events, ...steps.slice(0, i));
    expect([ids(session.corrections), ids(session.undone), session.spokenG]).toEqual([
      corrections,
      undone,
      grams,
    ]);
  });
});

test("withdrawals that name one thing twice name it once, and the newest tells when it was taken", () => {
  const events = [fish(1, 100), fish(2, 200), withdraw(3, "e1", "e1")];
  const [taken] = fold(...events).withdrawn;
  expect(ids(taken?.history ?? [])).toEqual(["e1", "e3"]);
  const back = fold(...events, withdraw(4, "e3", "e3"), withdraw(5, "e4"), withdraw(6, "e5"));
  expect(back.count).toBe(2);
  expect(fold(...events, withdraw(4, "e3", "e3"), withdraw(5, "e4")).count).toBe(1);
  const again = fold(...events, withdraw(4, "e2"), withdraw(5, "e1"), settle(6, "e1"));
  expect(ids(again.withdrawn)).toEqual(["e2", "e1"]);
  expect(ids(again.withdrawn[1]?.history ?? [])).toEqual(["e1", "e3", "e5", "e6"]);
});

test("withdrawals of a redo undo it, and a correction of nothing ends no way forward", () => {
  const undone = [fish(1, 900), amend(2, "e1", { weightG: 1000 }), withdraw(3, "e2")];
  expect(ids(fold(...undone, settle(4, "gone")).undone)).toEqual(["e3"]);
  const redone = [...undone, withdraw(4, "e3")];
  const session = fold(...redone, withdraw(5, "e4"));
  expect([session.spokenG, ids(session.corrections)]).toEqual([900, []]);
  expect(ids(session.undone)).toEqual(["e3", "e5"]);
  expect(fold(...redone, withdraw(5, "e4"), withdraw(6, "e5")).spokenG).toBe(1000);
});

test("undo and redo reach what a phone has corrected whose clock is an hour ahead", () => {
  const events = [
    fish(1, 900),
    { ...settle(30, "e1"), device: "there" },
    amend(62, "e1", { weightG: 1000 }),
    amend(63, "e1", { weightG: 1100 }),
  ];
  const here = (seq: number, target: string) => ({ ...withdraw(seq, target), device: "here" });
  const steps = [here(2, "e63"), here(3, "e62"), here(4, "e3"), here(5, "e2")];
  const states = [
    [["e30", "e62", "e63"], [], 1100],
    [["e30", "e62"], ["e2"], 1000],
    [["e30"], ["e2", "e3"], 900],
    [["e30", "e62"], ["e2"], 1000],
    [["e30", "e62", "e63"], [], 1100],
  ];
  states.forEach((state, done) => {
    const { corrections, undone, spokenG } = fold(...events, ...steps.slice(0, done));
    expect([ids(corrections), ids(undone), spokenG]).toEqual(state);
  });
  // A new one ends the way forward, wherever it was made.
  expect(fold(...events, ...steps.slice(0, 1), settle(64, "e1")).undone).toEqual([]);
});

test("withdrawals in a ring count for nothing, and neither do those of themselves", () => {
  const ring = [withdraw(2, "e1", "e3"), withdraw(3, "e1", "e2"), withdraw(4, "e1", "e4")];
  const session = fold(fish(1), ...ring);
  expect(session.count).toBe(1);
  expect(session.corrections).toEqual([]);
  expect(ids(fold(fish(1), ...ring, settle(5, "e1")).corrections)).toEqual(["e5"]);
  const undone = [withdraw(2, "e1"), withdraw(3, "e2"), withdraw(4, "e3"), withdraw(5, "e3")];
  const doubtful = [withdraw(6, "e2", "e7"), withdraw(7, "e6")];
  expect(fold(fish(1), ...undone, ...doubtful).count).toBe(1);
});

test("withdrawals of a plan or a weighing count too", () => {
  const events = [
    event(1, { kind: "plan", plan: { peg: "7" } }),
    event(2, { kind: "weigh", net: 1, weightG: 5000 }),
  ];
  expect(fold(...events)).toMatchObject({ plan: { peg: "7" }, nets: [{ weighedG: 5000 }] });
  const without = fold(...events, withdraw(3, "e1", "e2"));
  expect(without.plan).toEqual({});
  expect(without.nets[0]).not.toHaveProperty("weighedG");
});
