/** Another rig. */
import { type Phrase, type Said, sure } from "./phrase.ts";

const NAMES =
  "shallow | deep | margin | edge | bottom | full depth | mid depth | mid water | up in the water | short | long | light | heavy | heavier | lighter | main | spare | dibber | dobber | inside | silvers | margin pole | deck | dead depth | deeper | shallower | slapping | jigger | long pole | far bank | track | other | top | surface | worm | punch | margins | shallowest | deepest";

const RIG_NAMES = NAMES.split(" | ");

/** A rig's name as said: its number, its own name, or what it is for. */
function rigName(said: Said): string | undefined {
  const number =
    said.first("number") ??
    said.first("ordinal") ??
    (said.says("rig one", "number one", "kit one", "topkit one") ? 1 : undefined);
  if (number !== undefined)
    return Number.isInteger(number) && number > 0 ? String(number) : undefined;
  const own = said.first("own-rig") ?? said.first("bait")?.id ?? said.first("species");
  return own ?? RIG_NAMES.filter((name) => said.says(name)).sort((a, b) => b.length - a.length)[0];
}

const ARTICLE = "the | my | a | that | this";

export const rig: Phrase = {
  id: "rig",
  patterns: [
    `[<switched>] [${ARTICLE}] rig [number] (<number> | one) [now | again | on | going on | on now | out | going out | it is]`,
    `[<switched>] [${ARTICLE}] (${NAMES} | <ordinal> | <bait> | <species> | <own-rig> | number <number> | number one) rig [now | again | on]`,
    `(<switched>) [${ARTICLE}] <own-rig>`,
    "(changed | changing | swapped | swapping | switched | switching | change | swap | switch) (rig | rigs | the rig | my rig | top kits | top kit) [to | to the | to number | to rig | for | for rig | to my] [number] (<number> | one | <own-rig>)",
    `[<switched>] [${ARTICLE}] (top kit | kit | topkit) [number] (<number> | one)`,
    "(different rig | new rig | changed rigs | another rig) [this is] [number | rig] (<number> | one)",
    "(new rig | changed rigs | changing rigs | different rig | another rig | changed the rig | fresh rig | swapped rigs | changed rig | put a new rig on | changing rig | swapping rigs)",
  ],
  examples: {
    "rig two": [{ kind: "change", rig: "2" }],
    "switching to the shallow rig": [{ kind: "change", rig: "shallow" }],
    "the second rig": [{ kind: "change", rig: "2" }],
    "on the paste rig": [{ kind: "change", rig: "paste" }],
    "the carp rig": [{ kind: "change", rig: "carp" }],
    "on the dobber": [{ kind: "change", rig: "dobber" }],
    "swapped rigs to number four": [{ kind: "change", rig: "4" }],
    "top kit three": [{ kind: "change", rig: "3" }],
    "different rig, number one": [{ kind: "change", rig: "1" }],
    "changed rigs": [{ kind: "change" }],
  },
  states(said) {
    const name = rigName(said);
    if (name !== undefined) return sure({ kind: "change", rig: name });
    return said.says(
      "changed rigs",
      "changing rigs",
      "new rig",
      "changed the rig",
      "different rig",
      "another rig",
      "fresh rig",
      "swapped rigs",
      "changed rig",
      "changing rig",
      "swapping rigs",
    )
      ? { statements: [{ kind: "change" }], doubts: ["which rig was not said"] }
      : undefined;
  },
};
