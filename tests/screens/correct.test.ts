import fc from "fast-check";
import { expect, test } from "vitest";
import { applyAmend } from "../../src/log/amend.ts";
import { correctionOf, same } from "../../src/log/correction.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { sound, withField } from "../../src/screens/review/correct.ts";

test("only what changed is amended", () => {
  const before: EntryStatement = { kind: "fish", species: "carp", weightG: 900, lengthMm: 400 };
  const after: EntryStatement = { kind: "fish", species: "tench", weightG: 900 };
  expect(correctionOf(before, after)).toEqual({
    by: "amend",
    set: { species: "tench" },
    clear: ["lengthMm"],
  });
});

test("what an amendment cannot say replaces the whole", () => {
  const after: EntryStatement = { kind: "sign", sort: "liner" };
  expect(correctionOf({ kind: "sign", sort: "bite" }, after)).toEqual({
    by: "replace",
    statement: after,
  });
});

test("a weight that stays a guess is said to be one again", () => {
  const before: EntryStatement = { kind: "fish", weightG: 900, approx: true };
  const after: EntryStatement = { kind: "fish", weightG: 1000, approx: true };
  const correction = correctionOf(before, after);
  expect(correction).toEqual({ by: "replace", statement: after });
});

test("the order of fields says nothing", () => {
  expect(same({ a: 1, unit: { b: 2, c: 3 } }, { unit: { c: 3, b: 2 }, a: 1 })).toBe(true);
  expect(same({ a: 1 }, { a: 2 })).toBe(false);
});

const fish = fc.record(
  {
    species: fc.constantFrom("carp", "tench", "f1"),
    weightG: fc.double({ min: 1, max: 9000, noNaN: true }),
    lengthMm: fc.integer({ min: 50, max: 900 }),
    count: fc.integer({ min: 1, max: 9 }),
    approx: fc.constant(true as const),
    foul: fc.constant(true as const),
  },
  { requiredKeys: [] },
);

test("a correction always leads from the one statement to the other", () => {
  fc.assert(
    fc.property(fish, fish, (one, other) => {
      const before: EntryStatement = { kind: "fish", ...one };
      const after: EntryStatement = { kind: "fish", ...other };
      const correction = correctionOf(before, after);
      const reached =
        correction.by === "amend"
          ? applyAmend(before, correction.set, correction.clear)
          : correction.by === "replace"
            ? correction.statement
            : before;
      expect(same(reached, after)).toBe(true);
    }),
  );
});

test("a field is set and taken away; what makes no sense is not sound", () => {
  const fish: EntryStatement = { kind: "fish", species: "carp" };
  expect(withField(fish, "weightG", 900)).toEqual({ kind: "fish", species: "carp", weightG: 900 });
  expect(withField(fish, "species", undefined)).toEqual({ kind: "fish" });
  expect(sound(withField(fish, "weightG", 0))).toBeUndefined();
  expect(sound(fish)).toEqual(fish);
});
