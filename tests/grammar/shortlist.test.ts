import fc from "fast-check";
import { expect, test } from "vitest";
import { shortlistOf } from "../../grammar/match/shortlist.ts";

const SMALL = [["small", "carp"], ["roach"]];

test("a pattern is tried where each part has one of its wordings, words of it together", () => {
  const shortlist = shortlistOf([[SMALL, [["off"]]], [[["off"]]], []]);
  expect(shortlist(["roach", "off"])).toEqual([0, 1, 2]);
  expect(shortlist(["a", "small", "carp", "came", "off"])).toEqual([0, 1, 2]);
  expect(shortlist(["small", "roach"])).toEqual([2]);
  expect(shortlist(["carp", "small", "off"])).toEqual([1, 2]);
  expect(shortlist([])).toEqual([2]);
});

test("parts beyond those that are looked at don't rule a pattern out", () => {
  const parts = Array.from({ length: 40 }, (_, n) => [[`w${n}`]]);
  const words = parts.map(([wording]) => wording?.[0] ?? "");
  expect(shortlistOf([parts])(words)).toEqual([0]);
  expect(shortlistOf([parts])(words.slice(1))).toEqual([]);
});

test("no row that holds all parts of a pattern is ever left out", () => {
  const word = fc.constantFrom("a", "b", "c", "d");
  const wording = fc.array(word, { minLength: 1, maxLength: 3 });
  const part = fc.array(wording, { minLength: 1, maxLength: 3 });
  const patterns = fc.array(fc.array(part, { maxLength: 4 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(patterns, fc.array(word, { maxLength: 8 }), (needs, row) => {
      const line = ` ${row.join(" ")} `;
      const holds = (words: readonly string[]) => line.includes(` ${words.join(" ")} `);
      const expected = needs.flatMap((parts, place) =>
        parts.every((wordings) => wordings.some(holds)) ? [place] : [],
      );
      expect(shortlistOf(needs)(row)).toEqual(expected);
    }),
  );
});
