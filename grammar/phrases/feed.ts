/** Feed that went in: how often, how much, of what, and how. */
import type { Statement, StatementOf } from "../statement.ts";
import { given, type Phrase, type Said, sure } from "./phrase.ts";

type Feed = StatementOf<"feed">;

const VERB =
  "fed | feeding | feed | i've fed | i'm feeding | i've just fed | put in | putting in | put | putting | dripping in | dripped in | dribbling in | dribbled in | dribbling | dribbled | trickling in | trickled in | introduced | topped up | topping up | topped up with | topping up with | topped up the swim with | topped it up with | in goes | in go | topped the swim up with | sprinkled in | sprinkling | sprinkled | loose fed | loose feeding | loosefed | chucked in | chucked | lobbed in | lobbed | dumped in | dumped | giving it | gave it | give it | giving them | dropped in | drip feeding | drip fed | spraying | sprayed | scattered | scattering | going in with | went in with | kept feeding | keep feeding | started feeding | tipped in | tipping in | tipped | tipping | dropping in | feeding in | fed in | refed | re fed";
const POT =
  "potted | potting | pot | potted in | potting in | pot in | cupped | cupping | cup | cupped in | cupping in | cup in | i've potted | i've potted in | i've cupped in | toss potted | toss potting | tapped in | tapping in | toss potted in";
const CATAPULT =
  "catapulted | catapulting | catapult | catapulted in | catapulting in | pinged | pinging | ping | pinged in | pinging in | firing in | fired in | fired | firing | catty | cattied in | i've catapulted | catapulted out | fire in | pulted";
const HAND =
  "threw | threw in | throwing | throwing in | thrown in | thrown | hand fed | hand feeding | hand feed | tossed in | tossing in | flicked in | flicking in | balled in | balling in | throw in | tossed | hand throwing | chucking in";
const SOME =
  "some | a few | few | a bit of | bit of | a bit more | bit more | a little | little | a little bit of | a handful of | handful of | a good helping of | more | some more | a load of | loads of | a pinch of | pinch of | a dribble of | it | a lot of | a small amount of | plenty of | a bit | a touch of | a touch more | the | lots of | another bit of | a good bit of | a few more | a drop of | a sprinkle of | sprinkle of | the swim | a | in some | in a few | in a bit of | another | a small | a big | a full | a half | half a | small | big | full";
const FEED_WORD = "feed | bait | it | loose feed | some feed | some bait | free offerings";
const TIMES =
  "twice | once | one time | three times | <number> times | <count> times | a couple of times | a few times | again";
const WITH =
  "in | by hand | with the pot | by pot | with the catapult | by catapult | with the catty | with a pot | with a catapult | in by hand | in by catapult | in with the catapult | in by pot | from the pot | from the catapult | out the pot | via the pot | with the toss pot | in the pot | by catty | with a toss pot | with the cup | in with the pot | in with the catty | in the swim | over the top | in the hole | to the swim | out with the catty | out with the catapult | out by hand | with the small pot | with the big pot | with a big pot | with a small pot | in the margin | down the edge | down the margin | on the line | round the float | over the float | on the far line | on the short line | on the long line | on the inside line | tight to the float";
const GOING =
  "in | going in | gone in | fed | potted in | potted | went in | is in | is going in | cupped in | catapulted in | thrown in | put in | by hand | with the catapult | with the catty | in the pot | by catapult | by pot | in by hand | with the pot | in again | over the top | pinged in | has gone in | just gone in";
const VESSEL =
  "pot | pots | cup | cups | potful | potfuls | pot full | cupful | cupfuls | pots full | toss pot | toss pots | big pot | small pot | big pots | small pots | cadful";
const PULL =
  "pouch | pouches | pult | catapult full | pouchful | pouchfuls | catapult | catapults | pouch full | pouches full";
const HANDFUL =
  "handful | handfuls | hand full | ball | balls | fistful | pinch | throw | throws | nugget | nuggets";

const how = (said: Said): Feed["how"] => {
  if (said.says(...rows(POT), ...rows(VESSEL), "the cup", "the toss pot")) return "pot";
  if (said.says(...rows(CATAPULT), ...rows(PULL), "the catty")) return "catapult";
  if (said.says("hand", ...rows(HAND), ...rows(HANDFUL))) return "hand";
  return undefined;
};

const rows = (rule: string): string[] => rule.split(" | ").map((row) => row.replaceAll("'", ""));

const times = (said: Said): number | undefined => {
  if (said.says("twice")) return 2;
  if (said.says("once", "one time")) return 1;
  return said.first("number") ?? said.first("count");
};

function fed(said: Said) {
  const weight = said.first("weight");
  const bait = said.first("bait");
  const often = times(said);
  if (often !== undefined && (!Number.isInteger(often) || often < 1)) return undefined;
  const statement: Statement = {
    kind: "feed",
    ...given({
      times: often,
      amountG: weight?.g,
      bait: bait?.id,
      baitNote: bait?.note,
      how: how(said),
      unit: weight && { weight: weight.unit },
    }),
  };
  return sure(statement);
}

const WHAT = `<weight> [of] <bait> | <weight> [of] [${FEED_WORD}] | <bait> <weight> | <bait>`;

/** Verbs that mean feeding only with something to feed. */
const VAGUE = rows(
  "put | putting | put in | putting in | giving it | gave it | give it | giving them | going in with | went in with | dropped in | dropping in | chucked | chucked in | dumped | dumped in | lobbed | lobbed in | tipped in | tipping in | introduced",
);

export const feeding: Phrase = {
  id: "feeding",
  patterns: [
    `(${VERB}) [${WITH}] [${SOME}] [<bait> | <weight> | <weight> of <bait> | <weight> <bait> | ${FEED_WORD}] [${WITH}] [${TIMES}] [${WITH}]`,
    `(${TIMES}) (fed | feeding | <bait>) [${WITH}]`,
    "[some | bit of | a bit of | more | a bit more | bit more] (feed's | feed | feed is | bait's | bait) (in | going in | gone in | went in)",
    "(a little feed of | a bit of feed of | little feed of | bit of feed of | some feed of | a sprinkle of | sprinkle of | a sprinkling of | sprinkling of | a dribble of | dribble of) <bait>",
    "(a bit more feed | bit more feed | some more feed | more feed | bit of feed | a bit of feed)",
    "(<number> | <count> | <ordinal>) (feed | feeds)",
  ],
  examples: {
    feeding: [{ kind: "feed" }],
    "fed twice": [{ kind: "feed", times: 2 }],
    "fed a hundred grams of pellet": [
      { kind: "feed", amountG: 100, bait: "pellet", unit: { weight: "g" } },
    ],
    "twice fed": [{ kind: "feed", times: 2 }],
    "bit of feed in": [{ kind: "feed" }],
    "a little feed of worm": [{ kind: "feed", bait: "worm" }],
    "bit more feed": [{ kind: "feed" }],
    "second feed": [{ kind: "feed" }],
    "fed a couple of times": [{ kind: "feed", times: 2 }],
    "three feeds": [{ kind: "feed", times: 3 }],
  },
  states: (said) =>
    said.says(...VAGUE) && !said.says("<bait>", "<weight>", "feed", "some bait")
      ? undefined
      : fed(said),
};

export const fedBy: Phrase = {
  id: "fed-by",
  patterns: [
    `(${POT}) [${SOME}] [<weight> | <weight> of <bait> | <weight> <bait> | <bait> | ${FEED_WORD}] [in] [${TIMES}]`,
    `(${CATAPULT}) [${SOME}] [<weight> | <weight> of <bait> | <weight> <bait> | <bait> | ${FEED_WORD}] [in] [${TIMES}]`,
    `(${HAND}) [${SOME}] [<weight> | <weight> of <bait> | <weight> <bait> | <number> balls of <bait> | <number> balls | <bait> | ${FEED_WORD}] [in] [by hand] [${TIMES}]`,
  ],
  examples: {
    "potted in fifty grams of pellet": [
      { kind: "feed", amountG: 50, bait: "pellet", how: "pot", unit: { weight: "g" } },
    ],
    "catapulted some maggots": [{ kind: "feed", bait: "maggot", how: "catapult" }],
    "potted in three times": [{ kind: "feed", times: 3, how: "pot" }],
    "potted in a couple of times": [{ kind: "feed", times: 2, how: "pot" }],
    "threw in some meat by hand": [{ kind: "feed", bait: "meat", how: "hand" }],
  },
  states: fed,
};

/** "three pounds in" is a fish: feed that is not named is told in grams. */
const isFishIn = (said: Said): boolean =>
  said.first("weight")?.unit === "lb" &&
  !said.says("<bait>", "fed", "feed", ...rows(VESSEL), ...rows(PULL), ...rows(HANDFUL));

export const fedMeasure: Phrase = {
  id: "fed-measure",
  patterns: [
    `[fed | feeding | put | put in | in goes | topped up with | topping up with | another | and | i've fed | putting | one | just | tipped | dumped | dropped | tipping | shipped out | emptied | tapped out] [a | another | a big | a small | a full | half a | one | one more] [<number> | <count> | a few | a couple] [more | big | small | full] (${VESSEL}) [of] [<weight> | <bait> | feed] [${GOING}] [<weight>]`,
    `[fed | feeding | put | put in | fired in | another | and | firing | fired | putting] [a | another | one | one more] [<number> | <count> | a few | a couple] [more | big | small | full] (${PULL}) [of] [<bait> | feed] [${GOING}]`,
    `[fed | feeding | put | put in | threw in | another | and | putting | balled in] [a | another | one | one more] [<number> | <count> | a few | a couple] [more | big | small | full | good | little] (${HANDFUL}) [of] [<bait> | feed] [${GOING}] [at the start | to start | to start with | to kick off]`,
    `[some | a | a few | few | bit of | a bit of | more | a bit more | a little | a little bit of | little bit of | another] (${WHAT}) (${GOING})`,
    `[using | with] the (catapult | catty | pot | toss pot | cup) (with | for | to feed | feeding) [${SOME}] <bait>`,
  ],
  examples: {
    "two pots of pellet": [{ kind: "feed", times: 2, bait: "pellet", how: "pot" }],
    "three pouches of maggots": [{ kind: "feed", times: 3, bait: "maggot", how: "catapult" }],
    "a couple of pots, fifty grams": [
      { kind: "feed", times: 2, amountG: 50, how: "pot", unit: { weight: "g" } },
    ],
    "two balls of groundbait in": [{ kind: "feed", times: 2, bait: "groundbait", how: "hand" }],
    "bit of hemp in": [{ kind: "feed", bait: "hemp" }],
    "using the catapult for some maggots": [{ kind: "feed", bait: "maggot", how: "catapult" }],
    "pellets with the catty": [{ kind: "feed", bait: "pellet", how: "catapult" }],
  },
  states: (said) =>
    said.items.length === 1 ||
    isFishIn(said) ||
    (said.says("pot", "cup", "throw", "ball") &&
      said.items.length < 3 &&
      !said.says("<bait>", "fed", "put", "<number>", "another", "in"))
      ? undefined
      : fed(said),
};
