import { expect, test } from "vitest";
import { expectedPhrases } from "../../grammar/expected.ts";
import { createReader } from "../../grammar/read.ts";

test("the angler's own words are expected first, and nothing twice", () => {
  const own = { rigs: [{ name: "dibbler", spoken: ["dibbler"] }] };
  const expected = expectedPhrases(own);
  expect(expected[0]).toBe("dibbler");
  expect(new Set(expected).size).toBe(expected.length);
  expect(expected).toContain("crucian");
});

test("every sentence that is expected is understood", () => {
  const reader = createReader();
  const sentences = expectedPhrases().filter((phrase) => phrase.includes(" "));
  expect(sentences.length).toBeGreaterThan(30);
  expect(sentences.filter((line) => reader.read([line]).verdict === "ignore")).toEqual([]);
});
