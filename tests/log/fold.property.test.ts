import fc from "fast-check";
import { expect, test } from "vitest";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";
import { foldSession, SessionFold } from "../../src/log/fold.ts";
import { SESSION, START } from "./session-script.ts";

/** Few ids, so that corrections often hit something, each other and themselves. */
const SIZE = 24;
const anId = fc.nat(SIZE).map((n) => `e${n}`);
const grams = fc.integer({ min: 1, max: 5000 });
const rig = fc.constantFrom("1", "2", "3");
const stepMm = fc.integer({ min: -400, max: 400 });

const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  fc.record(
    { kind: fc.constant("fish" as const), weightG: grams, count: fc.integer({ min: 1, max: 4 }) },
    { requiredKeys: ["kind"] },
  ),
  fc.record(
    { kind: fc.constant("change" as const), rig, depthMm: grams, depthByMm: stepMm, hook: grams },
    { requiredKeys: ["kind"] },
  ),
  fc.record(
    { kind: fc.constant("net" as const), number: fc.integer({ min: 1, max: 4 }) },
    { requiredKeys: ["kind"] },
  ),
  fc.record({
    kind: fc.constant("session" as const),
    act: fc.constantFrom("start", "pause", "resume", "stop"),
  }),
  fc.constant({ kind: "loss", cause: "off" } as const),
  fc.record({ kind: fc.constant("remind" as const), everyMs: fc.constantFrom(0, 1000) }),
);

const at = fc.integer({ min: START, max: START + SIZE });

const body: fc.Arbitrary<EventBody> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record(
      { kind: fc.constant("entry" as const), statement, beside: anId },
      { requiredKeys: ["kind", "statement"] },
    ),
  },
  fc.record({ kind: fc.constant("heard" as const) }),
  fc.record(
    {
      kind: fc.constant("amend" as const),
      target: anId,
      set: fc.record({ weightG: grams, depthMm: grams }, { requiredKeys: [] }),
      clear: fc.constant<string[]>(["count", "rig"]),
      at,
    },
    { requiredKeys: ["kind", "target", "set"] },
  ),
  fc.record({ kind: fc.constant("replace" as const), target: anId, statement }),
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant("withdraw" as const),
      targets: fc.array(anId, { maxLength: 3 }),
    }),
  },
  fc.record({ kind: fc.constant("settle" as const), target: anId }),
  fc.record({
    kind: fc.constant("plan" as const),
    plan: fc.record({ peg: fc.option(fc.constantFrom("7", "8")) }, { requiredKeys: [] }),
  }),
  fc.record({
    kind: fc.constant("weigh" as const),
    net: fc.integer({ min: 1, max: 3 }),
    weightG: grams,
  }),
);

/** Times and devices clash and disagree with the numbers, as on phones whose clocks do. */
const events: fc.Arbitrary<LogEvent[]> = fc
  .array(
    fc.record({
      body,
      at,
      device: fc.constantFrom("a", "b"),
      verdict: fc.constantFrom("log" as const, "check" as const),
    }),
    { maxLength: SIZE },
  )
  .map((list) =>
    list.map(
      (one, n): LogEvent => ({
        v: 1,
        id: `e${n}`,
        session: SESSION,
        seq: n + 1,
        heard: { text: "said", by: "typed" },
        ...one,
      }),
    ),
  );

const shuffled = events.chain((list) =>
  fc.tuple(
    fc.constant(list),
    fc.shuffledSubarray(list, { minLength: list.length }),
    fc.subarray(list),
  ),
);

test("the same events in any order, and some of them twice, give the same session", () => {
  fc.assert(
    fc.property(shuffled, ([list, mixed, again]) => {
      expect(foldSession(SESSION, [...mixed, ...again])).toEqual(foldSession(SESSION, list));
    }),
    { numRuns: 1000 },
  );
});

test("looked at after every event, it is the session of the events so far", () => {
  fc.assert(
    fc.property(shuffled, ([, mixed]) => {
      const running = new SessionFold(SESSION);
      mixed.forEach((one, n) => {
        expect(running.add(one).session).toEqual(foldSession(SESSION, mixed.slice(0, n + 1)));
      });
    }),
    { numRuns: 300 },
  );
});

test("withdrawing any one event and then the withdrawal leaves what counts as it was", () => {
  fc.assert(
    fc.property(events, anId, (list, id) => {
      const later = (n: number, target: string): LogEvent => ({
        v: 1,
        id: `later${n}`,
        session: SESSION,
        device: "c",
        seq: n,
        at: START + 10 * SIZE + n,
        verdict: "log",
        body: { kind: "withdraw", targets: [target] },
      });
      const before = foldSession(SESSION, list);
      const after = foldSession(SESSION, [...list, later(1, id), later(2, "later1")]);
      expect({ ...after, undone: [] }).toEqual({ ...before, undone: [] });
    }),
    { numRuns: 500 },
  );
});
