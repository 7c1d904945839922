/** A fish on the bank. */
import type { Item } from "../match/items.ts";
import { GRAMS_PER_POUND as LB, GRAMS_PER_OUNCE as OZ } from "../quantity/units.ts";
import type { Statement } from "../statement.ts";
import { readFishes } from "./fish-reading.ts";
import type { Phrase, Said } from "./phrase.ts";

const DETAIL =
  "<weight> | <about> <weight> | at <weight> | a <weight> | a <weight> one | of <about> <weight> | of <about> <length> | of <length> | of <weight> | <length> | <about> <length> | at <length> | <number> <number> | <number> | <about> <number> | <about> | the <weight> mark | <species> | a <species> | an <species> | that | that one | that's | it's | which is | he's | she's | on the nose | bang on | exactly | dead on | spot on | dead | on the dot | both | of the day | it weighs | which weighs | went | went <weight> | it went <weight> | just <weight> | it went | this one's | <roughly> | long | of them | pushing <weight> | just under the <weight> | just over the <weight> | the <weight> | nudging <weight> | all <species> | of them | the size | is a <species> | of the day is a <species> | landed it | one after the other | got it in | for me | hooked in the tail | each | each of them | in total | all told | measures | it measures | and it measures | measured | came in | which was foul hooked | that was foul hooked | each one | a foot long | foot long | apiece | a piece | all | between them | for the lot | altogether | in total | for | foul hooked | foul hooker | it was foul hooked | in the tail | in | in net | in the net | in to the net | in the keepnet | in the bag | on the bank | landed | caught | of them | length | measuring | weight | weighing | weighs | or | the pair | the lot | one <weight> | one at <weight> | one of <weight>";

/** What must not stand alone: it is said to a neighbour, not to the log. */
const PRAISE = ["nice", "good", "lovely", "decent", "cracking", "proper", "big", "better", "tidy"];

const isPraise = (said: Said): boolean =>
  said.says(...PRAISE) &&
  !said.says(
    "<species>",
    "<weight>",
    "<length>",
    "<number>",
    "<count>",
    "got",
    "another",
    "had",
    "landed",
  );

export const fish: Phrase = {
  id: "fish",
  patterns: [
    `[<caught>] [<article>] [<number> | <count> | one] [<more>] <quality>* (<species> | fish | fishes | silvers) (${DETAIL})*`,
    `[<caught>] [<article>] [<quality>] <number> <number> <quality>* (<species> | fish | one) (${DETAIL})*`,
    `[<caught>] [<article>] [<number> | <count>] [<more>] <quality>* [<about>] [a | an] <quality>* (<weight> | <length> | <number> <number> | <weight> <length> | <length> <weight>) [<roughly>] [of a | of] <quality>* (<species> | fish | fishes | one) (${DETAIL})*`,
  ],
  examples: {
    fish: [{ kind: "fish" }],
    "fish, two pounds, forty centimetres": [
      { kind: "fish", weightG: 2 * LB, lengthMm: 400, unit: { weight: "lb", length: "cm" } },
    ],
    "F1, two eight": [{ kind: "fish", species: "f1", weightG: 40 * OZ, unit: { weight: "lb" } }],
    "two four F1": [{ kind: "fish", species: "f1", weightG: 36 * OZ, unit: { weight: "lb" } }],
    "skimmer ten ounces": [
      { kind: "fish", species: "skimmer", weightG: 10 * OZ, unit: { weight: "oz" } },
    ],
    "three small roach": [{ kind: "fish", species: "roach", count: 3 }],
    "a couple of perch": [{ kind: "fish", species: "perch", count: 2 }],
    "two carp, three pounds and four pounds": [
      { kind: "fish", species: "carp", weightG: 3 * LB, unit: { weight: "lb" } },
      { kind: "fish", species: "carp", weightG: 4 * LB, unit: { weight: "lb" } },
    ],
    "another pound and a half carp": [
      { kind: "fish", species: "carp", weightG: 1.5 * LB, unit: { weight: "lb" } },
    ],
    "forty centimetre tench": [
      { kind: "fish", species: "tench", lengthMm: 400, unit: { length: "cm" } },
    ],
    "carp, about three pounds, foul hooked": [
      {
        kind: "fish",
        species: "carp",
        weightG: 3 * LB,
        approx: true,
        foul: true,
        unit: { weight: "lb" },
      },
    ],
    "carp, forty": [{ kind: "fish", species: "carp", lengthMm: 400, unit: { length: "cm" } }],
  },
  states: (said) => (isPraise(said) ? undefined : stated(said.items)),
};

export const oneMore: Phrase = {
  id: "one-more",
  patterns: [
    `[<caught>] [<article>] <quality>* one (${DETAIL})*`,
    `[<caught>] [<article>] (foul hooker | foul hooked a <species> | foul hooked an <species> | foul hooked one | foul hooked a fish) (${DETAIL})*`,
    `[got | had | and | that's | landed] (another | one more | another one | one in) (${DETAIL})*`,
  ],
  examples: {
    "got one": [{ kind: "fish" }],
    "another one, three pounds": [{ kind: "fish", weightG: 3 * LB, unit: { weight: "lb" } }],
    "got one, carp, forty": [
      { kind: "fish", species: "carp", lengthMm: 400, unit: { length: "cm" } },
    ],
    "got one, forty centimetres": [{ kind: "fish", lengthMm: 400, unit: { length: "cm" } }],
    "landed a foul hooker": [{ kind: "fish", foul: true }],
    "foul hooked a carp": [{ kind: "fish", species: "carp", foul: true }],
    another: [{ kind: "fish" }],
  },
  states(said) {
    if (!isCatch(said)) return undefined;
    const read = stated(said.items);
    const doubts = [...(read?.doubts ?? []), ...doubtsOfOneMore(said)];
    return read && { ...read, doubts };
  },
};

/** A fish that was foul hooked may be on yet, and a number after "another" may count or weigh. */
function doubtsOfOneMore(said: Said): string[] {
  const isSized = said.says("<weight>", "<length>");
  if (FOUL_HOOKED.test(said.words) && !isSized) return ["whether it was landed"];
  return said.says("another <number>") && !isSized ? ["a bare number"] : [];
}

const FOUL_HOOKED = /^ foul hooked (an? |one )/;

/** "that's a nice one" is talk; "got one" and "another one" are catches. */
const isCatch = (said: Said): boolean =>
  said.says(
    "got",
    "had",
    "caught",
    "landed",
    "another",
    "netted",
    "banked",
    "one more",
    "in the net",
    "in the keepnet",
    "on the bank",
    "<weight>",
    "<length>",
  ) ||
  said.says("i have") ||
  FOUL_HOOKED.test(said.words);

export const weightOnly: Phrase = {
  id: "weight-only",
  patterns: [`[<caught>] [<article>] [<number> | <count>] [<about>] [a] <weight> (${DETAIL})*`],
  examples: {
    "got about two pounds, a carp": [
      {
        kind: "fish",
        species: "carp",
        weightG: 2 * LB,
        approx: true,
        unit: { weight: "lb" },
      },
    ],
    "a two pounder, forty centimetres": [
      { kind: "fish", weightG: 2 * LB, lengthMm: 400, unit: { weight: "lb", length: "cm" } },
    ],
    "a two pounder, forty": [
      { kind: "fish", weightG: 2 * LB, lengthMm: 400, unit: { weight: "lb", length: "cm" } },
    ],
    "a two pounder": [{ kind: "fish", weightG: 2 * LB, unit: { weight: "lb" } }],
    "two two pounders": [{ kind: "fish", count: 2, weightG: 2 * LB, unit: { weight: "lb" } }],
    "a couple of two pounders": [
      { kind: "fish", count: 2, weightG: 2 * LB, unit: { weight: "lb" } },
    ],
  },
  states(said) {
    const read = stated(said.items);
    const isCounted = / (<number>|<count>) (\w+ )*?<weight> /.test(said.words);
    if (isCounted && !said.first("weight")?.ofFish) return undefined;
    if (
      !read ||
      said.first("weight")?.ofFish ||
      said.says("another", "got", "had", "landed", "caught")
    )
      return read;
    return { ...read, doubts: [...(read.doubts ?? []), "a weight without a fish"] };
  },
};

function stated(items: readonly Item[]) {
  const { fishes, doubts } = readFishes(items);
  const statements: Statement[] = fishes;
  return statements.length === 0 ? undefined : { statements, ...(doubts.length > 0 && { doubts }) };
}
