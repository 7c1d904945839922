import { describe, expect, test } from "vitest";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession, SessionFold } from "../../src/log/fold.ts";
import {
  amend,
  entry,
  event,
  heard,
  MINUTE_MS,
  replace,
  SESSION,
  START,
  settle,
  withdraw,
} from "./session-script.ts";

const fold = (...events: LogEvent[]) => foldSession(SESSION, events);
const minute = (n: number) => START + n * MINUTE_MS;
const fish = (seq: number, weightG?: number, count?: number) =>
  entry(seq, {
    kind: "fish",
    ...(weightG !== undefined && { weightG }),
    ...(count !== undefined && { count }),
  });
const act = (seq: number, what: "start" | "pause" | "resume" | "stop") =>
  entry(seq, { kind: "session", act: what });

test("nothing yet", () => {
  expect(fold()).toEqual({
    id: SESSION,
    state: "ready",
    pauses: [],
    plan: {},
    setUp: {},
    net: 1,
    nets: [{ number: 1, count: 0, spokenG: 0, unweighed: 0 }],
    entries: [],
    heardLines: [],
    withdrawn: [],
    corrections: [],
    undone: [],
    count: 0,
    spokenG: 0,
    unweighed: 0,
  });
});

test("events of another session are left aside", () => {
  const other = entry(1, { kind: "drop" }, { session: "other" });
  expect(fold(other).entries).toEqual([]);
});

describe("fish", () => {
  test("are numbered, and an entry of three takes three numbers", () => {
    const session = fold(fish(1, 900), fish(2, 50, 3), fish(3));
    expect(session.entries.map((one) => one.fishNumber)).toEqual([1, 2, 5]);
    expect(session).toMatchObject({ count: 5, spokenG: 1050, unweighed: 1, lastFishAt: minute(3) });
  });

  test("are summed net by net", () => {
    const weighing = event(8, { kind: "weigh", net: 2, weightG: 180 });
    const session = fold(
      fish(1, 900),
      entry(2, { kind: "net" }),
      fish(3, 100, 2),
      entry(4, { kind: "net", number: 5 }),
      fish(5),
      entry(6, { kind: "net", number: 1 }),
      fish(7, 50),
      weighing,
    );
    expect(session.net).toBe(1);
    expect(session.nets).toEqual([
      { number: 1, count: 2, spokenG: 950, unweighed: 0 },
      { number: 2, count: 2, spokenG: 200, unweighed: 0, weighedG: 180, weighedBy: [weighing.id] },
      { number: 5, count: 1, spokenG: 0, unweighed: 1 },
    ]);
    expect(session.entries.map((one) => one.net)).toEqual([1, 2, 2, 5, 5, 1, 1]);
    const back = fold(entry(1, { kind: "net", number: 5 }), entry(2, { kind: "net", number: 3 }));
    expect(back.nets.map(({ number }) => number)).toEqual([1, 3, 5]);
    expect(fold(entry(1, { kind: "net", number: 3 }), entry(2, { kind: "net" })).net).toBe(4);
  });

  test("carry the set-up in force, which a corrected change corrects after the fact", () => {
    const before = [entry(1, { kind: "change", depthMm: 500 }), fish(2), fish(3)];
    const after = fold(...before, amend(4, "e1", { lengthMm: 600 }));
    expect(fold(...before).entries[2]?.setUp).toEqual({ depthMm: 500 });
    expect(after.entries.map((one) => one.setUp)).toEqual(Array(3).fill({ depthMm: 600 }));
  });
});

describe("progress", () => {
  test.each([
    [{ kind: "fish" }],
    [{ kind: "loss", cause: "off" }],
    [{ kind: "sign", sort: "bite" }],
    [{ kind: "drop" }],
    [{ kind: "feed" }],
  ] as const)("%o starts a session that nobody started", (statement) => {
    expect(fold(entry(1, statement))).toMatchObject({ state: "fishing", startedAt: minute(1) });
  });

  test.each([
    [{ kind: "change", depthMm: 500 }],
    [{ kind: "note", text: "sun" }],
    [{ kind: "net" }],
    [{ kind: "session", act: "pause" }],
  ] as const)("%o does not", (statement) => {
    const session = fold(entry(1, statement));
    expect(session.state).toBe("ready");
    expect(session).not.toHaveProperty("startedAt");
  });

  test("pauses have a beginning, and an end once it came", () => {
    const events = [act(1, "start"), act(10, "pause")];
    expect(fold(...events)).toMatchObject({ state: "paused", pauses: [{ from: minute(10) }] });
    expect(fold(...events, act(20, "resume"))).toMatchObject({
      state: "fishing",
      startedAt: minute(1),
      pauses: [{ from: minute(10), to: minute(20) }],
    });
    const ended = fold(...events, act(20, "resume"), act(30, "stop"));
    expect(ended.pauses).toEqual([{ from: minute(10), to: minute(20) }]);
  });

  test("a rig in the water ends a break, feeding does not", () => {
    const events = [act(1, "start"), act(10, "pause"), entry(15, { kind: "feed" })];
    expect(fold(...events).state).toBe("paused");
    expect(fold(...events, fish(20)).pauses).toEqual([{ from: minute(10), to: minute(20) }]);
  });

  test("the end closes a break; a fish written late counts and restarts nothing", () => {
    const session = fold(
      act(1, "start"),
      act(10, "pause"),
      act(20, "stop"),
      fish(30),
      act(31, "stop"),
    );
    expect(session).toMatchObject({
      state: "ended",
      endedAt: minute(20),
      pauses: [{ from: minute(10), to: minute(20) }],
      count: 1,
    });
  });

  test("resuming after the end goes on, and the time between was a break", () => {
    const session = fold(act(1, "start"), act(20, "stop"), act(30, "resume"));
    expect(session).toMatchObject({
      state: "fishing",
      startedAt: minute(1),
      pauses: [{ from: minute(20), to: minute(30) }],
    });
    expect(session).not.toHaveProperty("endedAt");
  });
});

describe("corrections", () => {
  test("amend in order, and keep their trace", () => {
    const session = fold(
      fish(1, 900),
      amend(2, "e1", { weightG: 1000 }),
      amend(3, "e1", { species: "carp" }),
    );
    expect(session.entries[0]).toMatchObject({
      statement: { kind: "fish", weightG: 1000, species: "carp" },
      history: [{ id: "e1" }, { id: "e2" }, { id: "e3" }],
    });
    expect(session.corrections.map((one) => one.id)).toEqual(["e2", "e3"]);
  });

  test("a replacement starts again from another reading", () => {
    const session = fold(
      fish(1, 900),
      amend(2, "e1", { species: "carp" }),
      replace(3, "e1", { kind: "loss", cause: "off" }),
      amend(4, "e1", { cause: "snapped" }),
    );
    expect(session.entries[0]?.statement).toEqual({ kind: "loss", cause: "snapped" });
  });

  test("a new time moves the entry among the others", () => {
    const moved = event(4, { kind: "amend", target: "e3", set: {}, at: minute(1) + 1 });
    const session = fold(fish(1), fish(2), fish(3), moved);
    expect(session.entries.map((one) => one.id)).toEqual(["e1", "e3", "e2"]);
    expect(session.entries[1]).toMatchObject({ at: minute(1) + 1, fishNumber: 2 });
  });

  test("a heard line becomes an entry, and a line again when that is undone", () => {
    const events = [heard(1, "that's a fish"), replace(2, "e1", { kind: "fish" })];
    const taken = fold(...events);
    expect(taken.heardLines).toEqual([]);
    expect(taken.entries[0]).toMatchObject({
      id: "e1",
      heard: { text: "that's a fish" },
      verdict: "log",
    });
    const undone = fold(...events, withdraw(3, "e2"));
    expect(undone.heardLines.map((one) => one.id)).toEqual(["e1"]);
    expect(undone.entries).toEqual([]);
  });

  test("a line may be put away and an amendment of a line is nothing", () => {
    expect(fold(heard(1, "hello"), amend(2, "e1", { species: "carp" })).heardLines).toHaveLength(1);
    expect(fold(heard(1, "hello"), withdraw(2, "e1")).heardLines).toEqual([]);
  });

  test("settling takes an entry off the list to look at", () => {
    const doubtful = entry(1, { kind: "fish" }, { verdict: "check" });
    expect(fold(doubtful).entries[0]?.verdict).toBe("check");
    expect(fold(doubtful, settle(2, "e1")).entries[0]?.verdict).toBe("log");
    expect(fold(doubtful, settle(2, "e1"), withdraw(3, "e2")).entries[0]?.verdict).toBe("check");
  });

  test("a doubtful amendment puts an entry on the list", () => {
    const doubtful = { ...amend(2, "e1", { weightG: 9 }), verdict: "check" as const };
    expect(fold(fish(1), doubtful).entries[0]?.verdict).toBe("check");
  });

  test("about nothing that is there change nothing", () => {
    const events = [
      fish(1, 900),
      amend(2, "nobody", { weightG: 1 }),
      replace(3, "nobody", { kind: "drop" }),
      withdraw(4, "nobody"),
      settle(5, "nobody"),
      withdraw(6),
    ];
    expect(fold(...events)).toEqual(fold(fish(1, 900)));
    const plan = event(1, { kind: "plan", plan: { peg: "7" } });
    expect(fold(plan, replace(2, "e1", { kind: "drop" }))).toMatchObject({
      plan: { peg: "7" },
      entries: [],
    });
  });
});

test("a later plan replaces the fields it names, and null clears one", () => {
  const plans = [
    event(1, { kind: "plan", plan: { water: "Osier Lake", peg: "7", targetG: 20_000 } }),
    event(2, { kind: "plan", plan: { peg: "8", targetG: null } }),
  ];
  expect(fold(...plans).plan).toEqual({ water: "Osier Lake", peg: "8" });
});

test("a reminder lasts until it is switched off", () => {
  const on = entry(1, { kind: "remind", everyMs: 180_000, about: "feed" });
  expect(fold(on).reminder).toEqual({ everyMs: 180_000, about: "feed", since: minute(1) });
  expect(fold(on, entry(2, { kind: "remind", everyMs: 0 }))).not.toHaveProperty("reminder");
});

describe("the running fold", () => {
  test("adds what comes last without walking the session again", () => {
    const running = new SessionFold(SESSION);
    for (let seq = 1; seq <= 100_000; seq++) running.add(fish(seq, 100)).session;
    expect(running.session).toMatchObject({ count: 100_000, spokenG: 10_000_000 });
    expect(running.walks).toBe(1);
  });

  test("walks again once for a correction, however often it is looked at", () => {
    const running = new SessionFold(SESSION).addAll([fish(1, 100), fish(2, 200)]);
    const before = running.session;
    expect(running.session).toBe(before);
    running
      .add(amend(3, "e1", { weightG: 150 }))
      .add(fish(1, 100))
      .add(fish(4, 50));
    expect(running.session.spokenG).toBe(400);
    expect(running.session).not.toBe(before);
    expect(running.walks).toBe(2);
    expect(before.spokenG).toBe(300);
  });

  test("an entry whose withdrawal came first is withdrawn when it arrives", () => {
    const early = withdraw(1, "e2");
    const running = new SessionFold(SESSION).add(early);
    expect(running.session.count).toBe(0);
    expect(running.add(fish(2)).session).toMatchObject({ count: 0, withdrawn: [{ id: "e2" }] });
  });
});
