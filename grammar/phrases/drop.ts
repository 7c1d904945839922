/** The rig goes into the water: a drop begins. */
import { type Phrase, sure } from "./phrase.ts";

export const drop: Phrase = {
  id: "drop",
  patterns: [
    "[the | my] (rig | rig's | rig has | rig is | line's | line is | bait's | hook's | float's | it's | we're | i'm | that's | pole's) [going | gone | gone back | going back | back | now] (in | in the water | out | back out | over the side | back in the water | down | in position) [again]",
    "[i'm | and | right] (going in | going back in | back in | in again | in we go | in she goes | in it goes | gone in | gone back in | going out | going back out | dropping in | dropping back in | dropped in | dropped back in | drop in | lowering in | lowered in | laying in | laid in | lowering it in | dropping it in | putting in | putting it in | put back in | straight back in | back out again | back out | rig going in | rig going back in | rig in | rig back in | out we go) [again | the water | over the feed | on the same line | at full depth]",
    "[i'm] (shipping | shipped | ship) (out | back out | it out | it back out | out again)",
    "in",
    "[new | next | another | fresh | first] (drop | put in | drop in)",
    "(laid | laying | lowering | lowered | dropping | dropped | putting | put | swung | swinging | flicked | flicking) (the rig | rig | the float | it | the bait) (in | out | back in | back out)",
  ],
  examples: {
    "rig's in": [{ kind: "drop" }],
    "going in": [{ kind: "drop" }],
    "shipping out": [{ kind: "drop" }],
    in: [{ kind: "drop" }],
    "new drop": [{ kind: "drop" }],
    "laid the rig in": [{ kind: "drop" }],
  },
  states: (said) =>
    said.says(
      "floats out",
      "floats down",
      "im down",
      "im out",
      "its down",
      "its out",
      "its going down",
      "its gone out",
      "hooks out",
      "lines out",
      "lines down",
      "its back",
      "poles down",
      "its in position",
      "its gone down",
      "floats gone down",
    )
      ? undefined
      : sure({ kind: "drop" }),
};
