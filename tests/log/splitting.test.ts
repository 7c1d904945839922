import { describe, expect, test } from "vitest";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { apart, asOne, together, withCount } from "../../src/log/splitting.ts";
import { amend, entry, SESSION, START } from "./session-script.ts";

const roach = (count: number, of: string, seq: number): LogEvent => {
  const event = entry(seq, withCount({ kind: "fish", species: "roach" }, count));
  return { ...event, body: { ...event.body, beside: of } as LogEvent["body"] };
};

/** A move that keeps the time: a piece stands at the time of what it was split from. */
const at = (seq: number, target: string, minutes: number) => {
  const event = amend(seq, target, {});
  return { ...event, body: { ...event.body, at: START + minutes * 60_000 } as LogEvent["body"] };
};

const numbers = (events: readonly LogEvent[]) =>
  foldSession(SESSION, events).entries.map((one) => [one.id, one.fishNumber]);

describe("pieces", () => {
  const three = entry(1, { kind: "fish", species: "roach", count: 3 });
  const change = { ...entry(2, { kind: "change", depthMm: 900 }), at: three.at };
  const next = entry(3, { kind: "fish", species: "carp" });
  const cut = [amend(6, "e1", {}, ["count"]), roach(2, "e1", 4), at(5, "e4", 1)];

  test("stand with what they were split from: the set-up and the numbers after stay", () => {
    const session = foldSession(SESSION, [three, change, next, ...cut]);
    expect(session.entries.map(({ id, fishNumber, setUp }) => [id, fishNumber, setUp])).toEqual([
      ["e1", 1, {}],
      ["e4", 2, {}],
      ["e2", undefined, { depthMm: 900 }],
      ["e3", 4, { depthMm: 900 }],
    ]);
  });

  test("of one entry stand in the order in which the fish are numbered, however often it is split", () => {
    const five = entry(1, { kind: "fish", species: "roach", count: 5 });
    const first = [amend(9, "e1", { count: 2 }), roach(1, "e1", 4), roach(2, "e4", 5)];
    const moves = [at(6, "e4", 1), at(7, "e5", 1)];
    // By its id the newest would come last.
    const again = [amend(80, "e1", {}, ["count"]), roach(1, "e1", 90), at(91, "e90", 1)];
    expect(numbers([five, change, next, ...first, ...moves, ...again])).toEqual([
      ["e1", 1],
      ["e90", 2],
      ["e4", 3],
      ["e5", 4],
      ["e2", undefined],
      ["e3", 6],
    ]);
  });

  test("of nothing, or of each other in a ring, stand where they were written", () => {
    expect(numbers([next, roach(1, "gone", 4)])).toEqual([
      ["e3", 1],
      ["e4", 2],
    ]);
    expect(numbers([roach(1, "e5", 4), roach(1, "e4", 5)])).toHaveLength(2);
  });
});

test("one fish within an entry of several", () => {
  const [, three] = foldSession(SESSION, [
    entry(1, { kind: "fish" }),
    entry(2, { kind: "fish", count: 3 }),
  ]).entries;
  const of = (number: number) => three && apart(three, number);
  expect(of(1)).toBeUndefined();
  expect(of(2)).toEqual({ counts: [1, 2], index: 0 });
  expect(of(3)).toEqual({ counts: [1, 1, 1], index: 1 });
  expect(of(4)).toEqual({ counts: [2, 1], index: 1 });
  expect(of(5)).toBeUndefined();
});

describe("two entries as one", () => {
  test("what the one leaves out stands in the other", () => {
    expect(
      asOne(
        { kind: "fish", species: "skimmer", unit: { length: "cm" } },
        { kind: "fish", weightG: 280, unit: { weight: "oz" } },
      ),
    ).toEqual({
      kind: "fish",
      species: "skimmer",
      weightG: 280,
      unit: { length: "cm", weight: "oz" },
    });
    expect(asOne({ kind: "drop" }, { kind: "drop" })).toEqual({ kind: "drop" });
  });

  test("not where they contradict each other", () => {
    const skimmer = { kind: "fish", species: "skimmer" } as const;
    expect(asOne(skimmer, { kind: "fish", species: "roach" })).toBeUndefined();
    expect(asOne(skimmer, { kind: "loss", cause: "off" })).toBeUndefined();
    expect(asOne({ ...skimmer, count: 3 }, skimmer)).toBeUndefined();
    expect(asOne({ ...skimmer, count: 3 }, { kind: "fish", weightG: 60 })).toBeDefined();
    const deeper = { kind: "change", depthByMm: 100 } as const;
    expect(asOne({ kind: "change", depthMm: 500 }, deeper)).toBeUndefined();
  });

  test("together they are as many and weigh as much as before", () => {
    const fish = { kind: "fish", species: "roach" } as const;
    expect(together({ ...fish, weightG: 100 }, { ...fish, weightG: 40, count: 2 })).toEqual({
      ...fish,
      weightG: 60,
      count: 3,
    });
    expect(together(fish, { ...fish, count: 2 })).toEqual({ ...fish, count: 3 });
    expect(together(fish, { ...fish, weightG: 40 })).toBeUndefined();
    expect(together(fish, { kind: "fish", species: "rudd" })).toBeUndefined();
    expect(together(fish, { ...fish, foul: true })).toBeUndefined();
  });
});
