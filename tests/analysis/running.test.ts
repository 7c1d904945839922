import fc from "fast-check";
import { expect, test } from "vitest";
import { moodAt, watchOf } from "../../src/analysis/change/watch.ts";
import { fishedStretches, lengthOf } from "../../src/analysis/effort/stretches.ts";
import { sum } from "../../src/analysis/estimate.ts";
import { baitUsed } from "../../src/analysis/rules/bait.ts";
import { Running } from "../../src/analysis/running.ts";
import { fillWeights } from "../../src/analysis/weights/fill.ts";
import { typicalFish } from "../../src/analysis/weights/typical.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import type { Entry, Session } from "../../src/log/session.ts";
import { at, sessionOf } from "./fixtures/session.ts";

const grams = fc.double({ min: 50, max: 5000, noNaN: true });
const millimetres = fc.double({ min: 100, max: 700, noNaN: true });
const species = fc.constantFrom("carp", "roach", "goldfish");
const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  fc.record({ kind: fc.constant("fish" as const), species, weightG: grams, lengthMm: millimetres }),
  fc.record({ kind: fc.constant("fish" as const), species, weightG: grams }),
  fc.record({ kind: fc.constant("fish" as const), species, lengthMm: millimetres }),
  fc.record({ kind: fc.constant("fish" as const), species, count: fc.integer({ min: 1, max: 5 }) }),
  fc.constant<EntryStatement>({ kind: "fish" }),
  fc.constant<EntryStatement>({ kind: "net" }),
  fc.constant<EntryStatement>({ kind: "feed", amountG: 20, bait: "corn", times: 2 }),
  fc.constant<EntryStatement>({ kind: "drop" }),
);
const sessions = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 240 }), statement), { maxLength: 40 })
  .map((lines) =>
    sessionOf(
      lines.toSorted(([one], [other]) => one - other),
      { pauses: [[60, 80]], weighed: { 1: 9000 } },
    ),
  );

test("sums carried on weigh what the fish told one by one weigh", () => {
  fc.assert(
    fc.property(sessions, (session) => {
      const running = Running.over(session);
      const { fish, unknown } = fillWeights(session.entries);
      for (const load of running.loads) {
        const inNet = fish.filter(({ entry }) => entry.net === load.net);
        expect(load.spokenG).toBeCloseTo(sum(inNet.map((one) => one.eachG * one.count)), 4);
        const variance = sum(inNet.map((one) => one.variance * one.count));
        expect(Math.abs(load.variance - variance)).toBeLessThan(1e-9 * (1 + variance));
      }
      expect(sum(running.loads.map((load) => load.unknown))).toBe(unknown);
      const [typical, expected] = [running.typical, typicalFish(fish)];
      expect(typical?.fish).toBe(expected?.fish);
      expect(typical?.meanG ?? 0).toBeCloseTo(expected?.meanG ?? 0, 6);
      expect(typical?.variance ?? 0).toBeCloseTo(expected?.variance ?? 0, 2);
    }),
  );
});

test("a session followed entry by entry comes to the same as one seen at its end", () => {
  fc.assert(
    fc.property(sessions, (session) => {
      const growing: Entry[] = [];
      const running = new Running();
      for (const entry of session.entries) {
        growing.push(entry);
        running.follow({ ...session, entries: growing });
      }
      const whole = Running.over(session);
      expect(running.loads).toEqual(whole.loads);
      expect(running.typical).toEqual(whole.typical);
      expect(running.baits).toEqual(baitUsed(session.entries));
      expect(running.watch).toEqual(watchOf(session, at(240)));
      expect(running.moodAt(at(240))).toBe(
        moodAt(whole.watch, lengthOf(fishedStretches(session, at(240)))),
      );
      expect(running.fedAt).toBe(
        session.entries.findLast((one) => one.statement.kind === "feed")?.at,
      );
    }),
  );
});

test("a correction, or another session, begins anew", () => {
  const fish = (weightG: number) =>
    sessionOf([
      [1, { kind: "fish", weightG }],
      [2, { kind: "feed", amountG: 9, bait: "corn" }],
    ]);
  const running = new Running().follow(fish(900)).follow(fish(400));
  expect(running.loads[0]?.spokenG).toBe(400);
  expect(running.baits.get("corn")?.grams).toBe(9);
});

/** The session with a list of entries that counts how often one is looked at. */
function counted(session: Session): { session: Session; looks: () => number } {
  let looks = 0;
  const entries = new Proxy([...session.entries], {
    get(target, key, receiver) {
      if (typeof key === "string" && /^\d+$/.test(key)) looks += 1;
      return Reflect.get(target, key, receiver);
    },
  });
  return { session: { ...session, entries }, looks: () => looks };
}

test.each([100, 2000])(
  "after %i entries one more is a look at it and at the end, no more",
  (size) => {
    const lines = Array.from({ length: size }, (_, place): [number, EntryStatement] => [
      (place * 400) / size,
      { kind: "fish", weightG: 500 },
    ]);
    const { session, looks } = counted(sessionOf(lines));
    const running = new Running().follow(session);
    const read = () => [
      running.loads,
      running.typical,
      running.biasAfter([]),
      running.moodAt(at(400)),
    ];
    read();
    const before = looks();
    (session.entries as Entry[]).push({ ...(session.entries[5] as Entry), at: at(401) });
    const pushed = looks();
    running.follow({ ...session });
    read();
    // The new one itself, and how far the session has got: when it is taken, and when it is asked.
    expect(looks() - pushed).toBe(3);
    running.follow({ ...session });
    read();
    expect(looks() - pushed).toBe(4);
    expect(before).toBeGreaterThanOrEqual(size);
  },
);
