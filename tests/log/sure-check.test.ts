import fc from "fast-check";
import * as v from "valibot";
import { expect, test } from "vitest";
import { eventSchema, type LogEvent } from "../../src/log/event.ts";
import { sureCheck } from "../../src/log/sure-check.ts";
import { day } from "../share/days.ts";

const isSure = sureCheck(eventSchema);
/** As the store gives it back. */
const events = day
  .filter((all) => all.length > 0)
  .chain((all) => fc.constantFrom(...all))
  .map((event) => structuredClone(event));

/** A list of one that is not there. */
const HOLE = new Array<string>(1);

/** Anything that may stand where it should not. */
const odd = fc.oneof(
  fc.anything(),
  fc.constantFrom<unknown>(
    ...[undefined, null, Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 0.5, "", "x".repeat(65)],
    ...["\ud800", "fish", "ask", "log", [], {}, HOLE, new Date(0), "x".repeat(10_001)],
  ),
);

/** Every place in a value, the value itself first. */
function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([name, one]) => placesIn(one, [...path, name]))];
}

/** A copy with something put, or taken away, in one place. */
function spoilt(value: unknown, [name, ...rest]: readonly string[], change: Change): unknown {
  if (name === undefined) return change.as;
  const copy = Object.assign(Array.isArray(value) ? [] : {}, value) as Record<string, unknown>;
  if (rest.length > 0) copy[name] = spoilt(copy[name], rest, change);
  else if (change.how === "put") copy[name] = change.as;
  else if (change.how === "drop") delete copy[name];
  else copy[change.name] = change.as;
  return copy;
}

interface Change {
  how: "put" | "drop" | "add";
  name: string;
  as: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  how: fc.constantFrom("put", "drop", "add"),
  name: fc.oneof(fc.string(), fc.constantFrom("count", "weightG", "target", "kind", "__proto__")),
  as: odd,
});

const damaged = fc.tuple(events, fc.nat(), change).map(([event, place, how]) => {
  const places = placesIn(event);
  return spoilt(event, places[place % places.length] ?? [], how);
});

test("it is sure of what the app writes, but for the rare plan with limits by bait", () => {
  fc.assert(
    fc.property(events, (event) => {
      const isByBait = event.body.kind === "plan" && event.body.plan.baitLimitsG;
      const hasSpeeds = event.body.kind === "plan" && event.body.plan.fallSpeeds;
      expect(isSure(event)).toBe(!isByBait && !hasSpeeds);
    }),
    { numRuns: 500 },
  );
});

test("what it accepts the schema accepts, and gives back as it is, however it was damaged", () => {
  let accepted = 0;
  let refused = 0;
  fc.assert(
    fc.property(damaged, (record) => {
      if (!isSure(record)) {
        if (!v.is(eventSchema, record)) refused += 1;
        return;
      }
      accepted += 1;
      const read = v.safeParse(eventSchema, record);
      expect(read.success).toBe(true);
      expect(read.output).toStrictEqual(record);
    }),
    { numRuns: 10_000 },
  );
  expect(accepted).toBeGreaterThan(150);
  expect(refused).toBeGreaterThan(1500);
});

const EVENT: LogEvent = {
  ...{ v: 1, id: "a", session: "s", device: "d", seq: 1, at: 5, verdict: "log" },
  body: { kind: "entry", statement: { kind: "fish", weightG: 900, count: 2 } },
};
const saying = (statement: object) => ({ ...EVENT, body: { kind: "entry", statement } });

test.each<[string, unknown]>([
  ["a field more", { ...EVENT, mood: "good" }],
  ["a field less", { ...EVENT, seq: undefined }],
  ["a length of an id", { ...EVENT, id: "" }],
  ["half a letter", { ...EVENT, id: "\ud83d" }],
  ["another version", { ...EVENT, v: 2 }],
  ["half a number", { ...EVENT, seq: 1.5 }],
  ["no end", { ...EVENT, at: Number.POSITIVE_INFINITY }],
  ["no number", { ...EVENT, at: Number.NaN }],
  ["a verdict nobody knows", { ...EVENT, verdict: "maybe" }],
  ["a weight of nothing", saying({ kind: "fish", weightG: 0 })],
  ["too many", saying({ kind: "fish", count: 10_001 })],
  ["a question as an entry", saying({ kind: "ask", what: "total" })],
  ["a kind nobody knows", saying({ kind: "sandwich" })],
  ["a list that is none", { ...EVENT, body: { kind: "withdraw", targets: "all" } }],
  ["a list with a hole", { ...EVENT, body: { kind: "withdraw", targets: HOLE } }],
  ["nothing", null],
  ["a list of it", [EVENT]],
])("it is not sure of %s", (_, record) => {
  expect(isSure(EVENT)).toBe(true);
  expect(isSure(record)).toBe(false);
});

test("it knows its own limits: of a schema it has never seen it is sure of nothing", () => {
  expect(sureCheck(v.bigint())(1n)).toBe(false);
  expect(sureCheck(v.pipe(v.string(), v.email()))("a@b.example")).toBe(false);
  expect(sureCheck(v.pipe(v.string(), v.trim()))("a")).toBe(false);
  const lengthOf = v.pipe(
    v.string(),
    v.transform((text) => text.length),
  );
  expect(sureCheck(lengthOf)("a")).toBe(false);
});
