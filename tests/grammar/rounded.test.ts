import { expect, test } from "vitest";
import { createReader } from "../../grammar/read.ts";
import { sayRounded } from "../../grammar/saying/rounded.ts";

const reader = createReader();

test.each([
  ["three skimmers for a pound", "3 skimmer, about 5.25 ounces each"],
  ["seven roach for two pounds three", "7 roach, about 5 ounces each"],
  ["three carp, ten pounds the lot", "3 carp, about 3 pounds 5.25 ounces each"],
  ["three perch for a hundred grams", "3 perch, about 33 grams each"],
  ["three carp for ten kilos", "3 carp, about 3.33 kilos each"],
  ["half a pound skimmer", "skimmer, half a pound"],
  ["skimmer, three quarters of a pound", "skimmer, three quarters of a pound"],
  ["carp, two pounds eight", "carp, 2 pounds 8 ounces"],
  ["gudgeon, half an ounce", "gudgeon, 0.5 ounces"],
  ["fish, forty centimetres", "fish, 40 centimetres"],
  ["fed fifty grams of pellet", "fed 50 grams of pellet"],
])("%s is said as %s", (heard, said) => {
  expect(reader.read([heard]).statements.map(sayRounded)).toEqual([said]);
});
