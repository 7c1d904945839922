import { LB, OZ, type Paraphrases } from "./group.ts";

const carp = (weightG: number) => ({ kind: "fish" as const, species: "carp", weightG });
const skimmer = (weightG: number) => ({ kind: "fish" as const, species: "skimmer", weightG });

/** Several fish in one breath, and whose the weights are. */
export const sizesShared: Paraphrases = [
  {
    means: [carp(3 * LB), carp(4 * LB)],
    said: [
      "two carp, three pound and four pound",
      "two carp three pounds and four pounds",
      "pair of carp, three pound and four pound",
      "a brace of carp, three pounds and four pounds",
      "couple of carp, 3 lb and 4 lb",
      "two carp, a three pounder and a four pounder",
      "two carp, one three pounds, one four pounds",
      "two carp, one of three pounds and one of four pounds",
      "two carp, three and four pounds",
      "two carp, 3 and 4 lb",
    ],
  },
  {
    means: [carp(2 * LB), carp(3 * LB), carp(4.5 * LB)],
    said: [
      "three carp, two pounds, three pounds and four and a half pounds",
      "three carp, two, three and four and a half pounds",
    ],
  },
  {
    means: [skimmer(10 * OZ), skimmer(12 * OZ)],
    said: ["two skimmers, ten ounces and twelve ounces", "two skimmers, ten and twelve ounces"],
  },
  {
    means: [
      { kind: "fish", weightG: LB },
      { kind: "fish", weightG: 1.5 * LB },
    ],
    said: ["two fish, a pound and a pound and a half"],
  },
  {
    means: [carp(4 * LB), { kind: "fish", species: "f1", weightG: 2 * LB }],
    said: ["carp and F1, four pounds and two pounds", "a carp and an F1, four pound and two pound"],
  },
  {
    means: [{ kind: "fish", species: "skimmer", count: 2, weightG: 6 * OZ }],
    said: [
      "brace of skimmers, six ounce each",
      "two skimmers, six ounces apiece",
      "couple of skimmers, both six ounces",
      "two six ounce skimmers",
    ],
  },
  {
    means: [{ kind: "fish", species: "roach", count: 2, weightG: 2 * OZ, approx: true }],
    said: [
      "two roach for four ounces",
      "two roach, four ounces the pair",
      "two roach, four ounces the lot",
      "two roach, four ounces all in",
      "two roach between them four ounces",
    ],
  },
  {
    means: [{ kind: "fish", count: 2, weightG: 2 * LB }],
    said: ["two two pounders", "a couple of two pounders", "got two two pounders"],
  },
  {
    means: [
      { kind: "fish", species: "roach", count: 2 },
      { kind: "fish", species: "skimmer", weightG: 8 * OZ },
    ],
    said: ["two roach and a skimmer, eight ounces", "two roach and an eight ounce skimmer"],
  },
  {
    means: [
      { kind: "fish", count: 3 },
      { kind: "change", bait: "worm" },
    ],
    said: ["another three on the worm"],
  },
  {
    means: [{ kind: "fish", species: "carp", foul: true }],
    said: [
      "foul hooked a carp",
      "I've foul hooked a carp",
      "foul hooked carp",
      "got a foul hooked carp",
    ],
  },
  {
    means: [{ kind: "fish", species: "carp", weightG: 4 * LB, foul: true }],
    said: ["foul hooked a carp, four pounds"],
  },
];
