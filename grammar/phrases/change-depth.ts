/** The depth of the rig: set, or shallower or deeper by so much. */
import { bareLength, type Phrase, type Said } from "./phrase.ts";

const SET =
  "is | is now | now | set | set to | set at | at | to | of | changed to | change to | down to | up to | plumbed | plumbed at | reading | about | around | roughly | should be | has changed to | gone to | is set to | is set at | is about";

export const depth: Phrase = {
  id: "depth",
  patterns: [
    `[set the | set | changed | change the | change | changing | new | my | the | fishing | fishing a | changed the | changing the | fishing at a | put the | at a | altered the | setting the | adjusted | adjusted the] (depth | depth's | debt) [${SET}] (<length> | <number> <number> | <number>) [deep | now | of water]`,
    "[now | i'm | we're | just] [set | fishing | gone to | going to | down to | up to | fishing shallow | fishing shallow at | fishing deep | set at | set it | going | gone | at | fishing at | in | it's | water's | lake's | peg's | on the bottom at | plumbed up | plumbed up at | plumbed | set to | setting it at | that's | swim's | fishing in | now at | running | running at | i'm at | the peg's | got | i've got | about] [about] <length> (deep | of depth | depth | depth now | of water | down | in depth | under the float) [now]",
    "(shallowed | shallowed up | shallowed off | deepened | deepened up | come up | gone down | gone up | shallowing up | deepening up | going up | going down) to (<length>) [deep | now]",
    "(plumbed | plumbed up | plumbed it | plumbed up at | plumbed it at | plumbed up to | set at | set to | set the rig at | set my rig at | set my float at | set the float at | fishing at depth | float set at | rig set at | rig's set at | depth to | set it at | set it to | set the rig to | set the float to | plumbing up at | plumbed in at | rig at | float at | set rig at) [about] (<length>) [deep | now]",
    "(fishing | now fishing | i'm fishing) [at | about | at about] (<length>) [now]",
  ],
  examples: {
    "depth half a metre": [{ kind: "change", depthMm: 500, unit: { length: "m" } }],
    "fishing two foot deep": [{ kind: "change", depthMm: 2 * 304.8, unit: { length: "ft" } }],
    "plumbed up at a metre twenty": [{ kind: "change", depthMm: 1200, unit: { length: "m" } }],
    "shallowed up to eighteen inches": [
      { kind: "change", depthMm: 18 * 25.4, unit: { length: "in" } },
    ],
    "fishing at four foot six": [{ kind: "change", depthMm: 4.5 * 304.8, unit: { length: "ft" } }],
    "depth sixty": [{ kind: "change", depthMm: 600, unit: { length: "cm" } }],
    "depth one twenty": [{ kind: "change", depthMm: 1200, unit: { length: "cm" } }],
  },
  states(said) {
    const read = bareLength(said);
    if (!read) return undefined;
    const { mm, unit, doubts } = read;
    if (FISHING.test(said.words) && unit === "m" && mm >= LEAST_DISTANCE_MM) return undefined;
    return {
      statements: [{ kind: "change", depthMm: mm, unit: { length: unit } }],
      doubts: mm > MOST_DEPTH_MM ? [...doubts, "an unlikely depth"] : doubts,
    };
  },
};

/** "Fishing at six metres" is how far out; in feet, or within a metre, it is how deep. */
const FISHING = /^ (now |im )?fishing (at )?(about )?<length> (now )?$/;
const LEAST_DISTANCE_MM = 1000;

/** Deeper than a pole can be fished. */
const MOST_DEPTH_MM = 10_000;

const SHALLOWER =
  "shallower | shallower now | up | shallowed | shallower than that | less depth | less deep | off the depth | higher | up in the water | up the line | off the bottom | off depth | shallowed up | higher in the water | off the deck | off bottom";
const DEEPER =
  "deeper | deeper now | down | lower | more depth | of depth | deepened | extra depth | on the depth | over depth | overdepth | further down | deeper than that | down in the water | lower in the water | more on the depth | to the depth | down the line";
const MOVED_UP =
  "shallowed up | shallowed | shallowed up by | shallowed by | shallowing up | shallowing up by | shallower by | shallower | come up | come up by | came up | came up by | coming up | coming up by | come shallower | come shallower by | gone up | gone up by | went up | went up by | going up | going up by | gone shallower by | going shallower by | go shallower by | moved up | moved up by | up by | up | raised it | raised it by | shallow up | shallow up by | shallowed off | float down | slide the float down | slide the float down by | slid the float down by | slid the float down | float down by | moved the float down | moved the float down by | depth up by | depth up | shallower depth by | go up | go up by | lifted it | lifted it by | raised the rig | raised the rig by | bring it up | brought it up | brought it up by | shallowed it up | shallowed it up by | took off | taken off | take off | taking off | knocked off | knock off | off the bottom by";
const MOVED_DOWN =
  "deepened up | deepened up by | deepened | deepened by | deepening | deepening up | deepening up by | deepening by | deepen | deepen up | deepen by | deeper by | deeper | gone down | gone down by | went down | went down by | going down | going down by | dropped down | dropped down by | come down | come down by | gone deeper by | going deeper by | go deeper by | down by | down | moved down | moved down by | dropped it | dropped it by | float up | float up by | the float up | slide the float up | slide the float up by | slid the float up by | slid the float up | moved the float up | moved the float up by | depth down by | depth down | added | add | adding | lowered it | lowered it by | deepened it up | deepened it up by | deepened it by | lowered the rig | lowered the rig by | go down | go down by | drop down | drop down by | dropped the depth | dropped the depth by | dropping down";

export const depthBy: Phrase = {
  id: "depth-by",
  patterns: [
    `[<moved>] [a | another | about | just | to | by] <length> (${SHALLOWER}) [in depth | now]`,
    `[<moved>] [a | another | about | just | to | by] <number> (shallower | up | higher) [now]`,
    `[<moved>] [a | another | about | just | to | by] <length> (${DEEPER}) [in depth | now]`,
    `[<moved>] [a | another | about | just | to | by] <number> (deeper | down | lower) [now]`,
    "[<moved> | add | adding | added | another | put | give it] [a | another | an extra | about | on] <length> (more depth | of depth | of more depth | depth on | extra depth | more of depth | on the depth | to the depth | onto the depth | of extra depth)",
    "(took | take | taken | taking | knocked | knock) [another | about] <length> of depth",
    "(took | take | taken | taking | knocked | knock | knocking) [another | about | just] <length> off",
    "(put | putting | added | add) [another | about | just] <length> on",
    "[took | take | taken | taking | knocked | knock | come | came | about] [another | about] <length> (off the depth | of depth off | off depth | less depth | off my depth)",
    `[<moved>] (${MOVED_UP}) [another | about | by another | by about] (<length> | <number>) [in depth | in the water | off the bottom | shallower]`,
    `[<moved> | slide | sliding] (${MOVED_DOWN}) [another | about | by another | by about] (<length> | <number>) [in depth | in the water | deeper | of depth | to the depth]`,
  ],
  examples: {
    "ten centimetres shallower": [{ kind: "change", depthByMm: -100, unit: { length: "cm" } }],
    "six inches deeper": [{ kind: "change", depthByMm: 152.4, unit: { length: "in" } }],
    "added ten centimetres of depth": [{ kind: "change", depthByMm: 100, unit: { length: "cm" } }],
    "took an inch of depth": [{ kind: "change", depthByMm: -25.4, unit: { length: "in" } }],
    "took two inches off": [{ kind: "change", depthByMm: -50.8, unit: { length: "in" } }],
    "put six inches on": [{ kind: "change", depthByMm: 152.4, unit: { length: "in" } }],
    "took a foot off the depth": [{ kind: "change", depthByMm: -304.8, unit: { length: "ft" } }],
    "shallowed up by two inches": [{ kind: "change", depthByMm: -50.8, unit: { length: "in" } }],
    "deepened up a foot": [{ kind: "change", depthByMm: 304.8, unit: { length: "ft" } }],
    "twenty shallower": [{ kind: "change", depthByMm: -200, unit: { length: "cm" } }],
    "another ten deeper": [{ kind: "change", depthByMm: 100, unit: { length: "cm" } }],
    "shallower by five": [{ kind: "change", depthByMm: -50, unit: { length: "cm" } }],
    "deeper by five": [{ kind: "change", depthByMm: 50, unit: { length: "cm" } }],
  },
  states(said) {
    const read = bareLength(said);
    if (!read) return undefined;
    const depthByMm = isShallower(said) ? -read.mm : read.mm;
    return {
      statements: [{ kind: "change", depthByMm, unit: { length: read.unit } }],
      doubts: read.doubts,
    };
  },
};

/** On a pole rig the float slides down the line to fish shallower. */
function isShallower(said: Said): boolean {
  if (said.says("float up", "the float up")) return false;
  if (said.says("float down", "the float down")) return true;
  return (
    said.says(
      "shallower",
      "shallow",
      "shallowed",
      "shallowing",
      "less",
      "higher",
      "off",
      "raised",
      "lifted",
      "up",
      "brought",
      "knocked",
      "knock",
      "took",
      "taken",
    ) && !said.says("deepened", "deepening", "deepen", "deeper", "overdepth", "over depth")
  );
}

export const deeperOrShallower: Phrase = {
  id: "deeper-or-shallower",
  patterns: [
    "[<moved>] [a bit | a little | a touch | a little bit | slightly | a fraction | much | a tad] (shallower | deeper) [now | in the water]",
    "(set up changed | setup changed | changed set up | changed my set up | shallowed up | deepened up | shallowed off | shallowing up | deepening up | come up in the water | changed depth | changed the depth | depth changed | changing depth | gone up in the water | coming up in the water) [a bit | a touch | now | a little]",
  ],
  examples: {
    "a bit shallower": [{ kind: "change" }],
    "deepened up": [{ kind: "change" }],
  },
  states: () => ({ statements: [{ kind: "change" }], doubts: ["how much was not said"] }),
};
