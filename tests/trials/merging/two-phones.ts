/** Two phones that write of one session, correct themselves and each other, and disagree on the time. */
import fc from "fast-check";
import type { EntryStatement, EventBody, LogEvent, PlanRig } from "../../../src/log/event.ts";
import { SESSION, START } from "../../log/session-script.ts";

const PHONES = ["left", "right"] as const;
/** Few, so that corrections often hit something, each other and themselves. */
const MOST_EVENTS = 16;
const HOUR_MS = 3_600_000;

const idOf = (phone: string, place: number) => `${phone}-${place}`;
const anId = fc
  .tuple(fc.constantFrom(...PHONES), fc.nat(MOST_EVENTS))
  .map(([phone, place]) => idOf(phone, place));
const grams = fc.integer({ min: 1, max: 3000 });
const step = fc.integer({ min: -300, max: 300 });
const rig = fc.constantFrom("1", "2", "margin");
const aTime = fc.integer({ min: START, max: START + 8 * HOUR_MS });

const optional = { requiredKeys: ["kind"] } as { requiredKeys: ["kind"] };
const kind = <K extends string>(of: K) => fc.constant(of);

const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record(
      {
        kind: kind("fish"),
        weightG: grams,
        count: fc.integer({ min: 1, max: 4 }),
        species: fc.constantFrom("carp", "roach"),
      },
      optional,
    ),
  },
  {
    weight: 2,
    arbitrary: fc.record(
      {
        kind: kind("change"),
        rig,
        depthMm: grams,
        depthByMm: step,
        hook: grams,
        bait: fc.constantFrom("corn", "worm"),
      },
      optional,
    ),
  },
  fc.record({ kind: kind("net"), number: fc.integer({ min: 1, max: 3 }) }, optional),
  fc.record({ kind: kind("session"), act: fc.constantFrom("start", "pause", "resume", "stop") }),
  fc.constantFrom<EntryStatement>(
    { kind: "loss", cause: "off" },
    { kind: "drop" },
    { kind: "sign", sort: "bite" },
  ),
  fc.record({ kind: kind("remind"), everyMs: fc.constantFrom(0, 60_000) }),
);

const plan = fc.record(
  {
    water: fc.option(fc.constantFrom("Osier Lake", "Marram Water")),
    rigs: fc.constant<PlanRig[]>([{ name: "2", depthMm: 700, shots: [] }]),
  },
  { requiredKeys: [] },
);

const body: fc.Arbitrary<EventBody> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: kind("entry"), statement }) },
  { weight: 2, arbitrary: fc.record({ kind: kind("entry"), statement, beside: anId }) },
  fc.record({ kind: kind("heard") }),
  {
    weight: 2,
    arbitrary: fc.record(
      {
        kind: kind("amend"),
        target: anId,
        set: fc.record({ weightG: grams, depthMm: grams }, { requiredKeys: [] }),
        clear: fc.constant<string[]>(["count", "rig"]),
        at: aTime,
      },
      { requiredKeys: ["kind", "target", "set"] },
    ),
  },
  fc.record({ kind: kind("replace"), target: anId, statement }),
  {
    weight: 4,
    arbitrary: fc.record({
      kind: kind("withdraw"),
      targets: fc.array(anId, { minLength: 1, maxLength: 3 }),
    }),
  },
  fc.record({ kind: kind("settle"), target: anId }),
  fc.record({ kind: kind("plan"), plan }),
  fc.record({ kind: kind("weigh"), net: fc.integer({ min: 1, max: 3 }), weightG: grams }),
);

/** What one phone wrote, in its order; its clock is ahead or behind, and stands still at times. */
const written = (phone: string): fc.Arbitrary<LogEvent[]> =>
  fc
    .tuple(
      fc.integer({ min: -HOUR_MS, max: HOUR_MS }),
      fc.array(
        fc.record({
          body,
          wait: fc.oneof(fc.constant(0), fc.nat(600_000)),
          verdict: fc.constantFrom("log" as const, "check" as const),
        }),
        { maxLength: MOST_EVENTS },
      ),
    )
    .map(([ahead, list]) => {
      let at = START + ahead;
      return list.map(({ wait, ...rest }, place): LogEvent => {
        at += wait;
        const heard = { text: "as said", by: "typed" as const };
        return {
          v: 1,
          id: idOf(phone, place),
          session: SESSION,
          device: phone,
          seq: place + 1,
          at,
          heard,
          ...rest,
        };
      });
    });

export interface Case {
  events: readonly LogEvent[];
  /** How they arrive: all of them, in any order, some of them again. */
  arrivals: readonly LogEvent[];
  /** After which arrivals the session is looked at. */
  looks: readonly boolean[];
}

export const merging: fc.Arbitrary<Case> = fc
  .tuple(written("left"), written("right"))
  .map(([left, right]) => [...left, ...right])
  .chain((events) =>
    fc
      .tuple(
        fc.shuffledSubarray(events, { minLength: events.length }),
        fc.subarray(events),
        fc.array(fc.boolean(), { minLength: 2 * events.length, maxLength: 2 * events.length }),
        fc.nat(),
      )
      .map(([mixed, again, looks, turn]) => {
        const place = turn % (mixed.length + 1);
        return {
          events,
          arrivals: [...mixed.slice(0, place), ...again, ...mixed.slice(place)],
          looks,
        };
      }),
  );
