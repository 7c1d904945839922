/** A hooked fish that got away. */
import type { StatementOf } from "../statement.ts";
import { given, type Phrase, type Said, sure } from "./phrase.ts";

type Cause = StatementOf<"loss">["cause"];

const THE_FISH =
  "one | it | him | that | a fish | that one | that fish | another | another one | another fish | the fish | a good one | a good fish | a big one | a big fish | a nice one | a decent one | a decent fish | a <species> | an <species> | another <species> | that <species> | <species> | a big <species> | a good <species> | a nice <species> | a decent <species> | the <species> | one <species> | a small <species> | a better one | a better fish | that good one | that good fish | that big one | that big fish | a lump";
const FOUL =
  "that was a foul hooker | it was a foul hooker | that was a foul hooked one | that was a foul hooked <species> | that was foul hooked | a foul hooked one | a foul hooked fish | a foul hooker | another foul hooker | another foul hooked one | foul hooker | foul hooked one | foul hooked something | foul hooked fish | the foul hooked one | a foul hooked <species> | another foul hooked <species> | foul hooked <species> | a foul one | a foul hook up | a fouler";
const OFF =
  "came off | come off | comes off | coming off | fell off | fallen off | dropped off | got off | gone | off | lost | shed the hook | threw the hook | slipped the hook | slipped off | came adrift | come adrift | coming adrift | shook the hook | shook off | bumped off | dropped | away | got away | gone off";
const AT_NET =
  "halfway in | half way in | on the way in | on the way back | shipping back | on the top kit | at the top kit | under the pole tip | near the net | at the net | on the net | on the net rim | on the rim | as i was netting it | as i was netting him | netting it | when i was netting it | going to the net | right at the net | under the tip | at the tip | right under the tip | by the net | over the net | just at the net | at net | netting it | netting him | as i netted it | just short of the net | at the landing net";
const BROKE =
  "snapped | broke | broken | smashed | cut | parted | gone | has gone | went | bust | snapped off | has snapped | has broken";

const lossOf = (cause: Cause, said: Said) => ({
  ...sure({ kind: "loss", cause, ...given({ species: said.first("species") }) }),
  ...(said.says("another", "one", "two") && { isAnother: true as const }),
});

const lostCause = (said: Said): Cause => {
  if (said.says("hooked in the fin", "hooked in the tail", "foul", "fowl", "fouler")) return "foul";
  return said.says("net", "netting", "netted") ? "net" : "off";
};

export const lost: Phrase = {
  id: "lost",
  patterns: [
    `[i've | i] (lost | bumped | dropped | dropped off | shed | missed out on) (${THE_FISH}) [off] [foul hooked | hooked in the fin | was hooked in the fin | hooked in the tail | it was foul hooked | was foul hooked | that was foul hooked | which was foul hooked | ${AT_NET}]`,
    `(lost | bumped off | fallen off | come off | came off | fell off | dropped off | off | it's gone | he's gone) [${AT_NET} | on me]`,
    `(it's | he's | that | that just | had it at the net it's | it | he | it's just | that's | that one | that one's | fish | fish has | the fish | the fish has | the fish is | fish is | one | another one | she's) (${OFF}) [${AT_NET} | on me]`,
    `[a | another | the | that | one | big] <species> [has | is] (${OFF}) [${AT_NET} | on me]`,
    "it's gone lost it",
    "(slipped the hook | shed the hook | threw the hook | shook the hook | come adrift | came adrift) [on me]",
  ],
  examples: {
    "lost one": [{ kind: "loss", cause: "off" }],
    "lost a tench at the net": [{ kind: "loss", cause: "net", species: "tench" }],
    "dropped off at the net": [{ kind: "loss", cause: "net" }],
    "it's come off": [{ kind: "loss", cause: "off" }],
    "carp came off": [{ kind: "loss", cause: "off", species: "carp" }],
    "it's gone, lost it": [{ kind: "loss", cause: "off" }],
    "slipped the hook": [{ kind: "loss", cause: "off" }],
  },
  states: (said) =>
    said.says("its off", "hes off", "its gone off") ? undefined : lossOf(lostCause(said), said),
};

const MOST_LOST = 4;

/** "lost two" is two losses. */
export const lostSeveral: Phrase = {
  id: "lost-several",
  patterns: [
    "[i've | just] (lost | bumped) [another] (<few>) [of them | fish | <species> | more] [in a row | on the trot | on the bounce | at the net]",
  ],
  examples: {
    "lost two": [
      { kind: "loss", cause: "off" },
      { kind: "loss", cause: "off" },
    ],
    "lost a couple of carp": [
      { kind: "loss", cause: "off", species: "carp" },
      { kind: "loss", cause: "off", species: "carp" },
    ],
  },
  states(said) {
    const count = said.first("number") ?? said.first("count") ?? 0;
    if (!Number.isInteger(count) || count < 1 || count > MOST_LOST) return undefined;
    const loss = { kind: "loss" as const, cause: "off" as const };
    const one = { ...loss, ...given({ species: said.first("species") }) };
    return sure(...Array.from({ length: count }, () => one));
  },
};

export const lostFoul: Phrase = {
  id: "lost-foul",
  patterns: [
    `[i've] (lost | bumped | dropped) (${FOUL})`,
    `(${FOUL} | foul hooked | foul hooked a <species>) [and] (lost it | lost him | lost | it's come off | it came off | he's come off | it's gone | it come off | it's off | ${OFF})`,
    `[the] hook [has] pulled out of (${FOUL})`,
  ],
  examples: {
    "lost a foul hooked one": [{ kind: "loss", cause: "foul" }],
    "foul hooked carp came off": [{ kind: "loss", cause: "foul", species: "carp" }],
    "hook pulled out of a foul hooked fish": [{ kind: "loss", cause: "foul" }],
  },
  states: (said) => lossOf("foul", said),
};

export const hookPulled: Phrase = {
  id: "hook-pulled",
  patterns: [
    `[lost (${THE_FISH}) [to] | another | a | <species>] (hook | the hook | the hook's | the hook has | hook has | hook's | a hook) (pulled | pull | pulls | pulled out | pull out | come out | came out | slipped) [on me | on it | on that one | on that | on him | of it | of him | on (${THE_FISH}) | of (${THE_FISH})] [<species>]`,
    `[<species> | it's | just] pulled out [on me | of it | of him | of that | of that one | of one | of (${THE_FISH}) | on me]`,
    "[lost it | lost one] (straightened the hook | straightened the hook out | straightened my hook | straightened me out | hook straightened | hook straightened out | the hook straightened | opened the hook up | opened the hook out | hook opened up) [on me]",
    `[lost (${THE_FISH})] pulled [the hook] (out of | on) (it | him | that one | ${THE_FISH})`,
  ],
  examples: {
    "hook pulled": [{ kind: "loss", cause: "pulled" }],
    "lost a carp, hook pulled": [{ kind: "loss", cause: "pulled", species: "carp" }],
    "carp pulled out": [{ kind: "loss", cause: "pulled", species: "carp" }],
    "pulled out of an F1": [{ kind: "loss", cause: "pulled", species: "f1" }],
    "straightened the hook": [{ kind: "loss", cause: "pulled" }],
    "pulled the hook out of a barbel": [{ kind: "loss", cause: "pulled", species: "barbel" }],
  },
  states: (said) => lossOf("pulled", said),
};

const LINE =
  "line | the line | line's | hooklength | the hooklength | hooklength's | hook length | the hook length | hook length's | rig | the rig | bottom | the bottom | hook link | hook link's | hooklink | hooklink's | the hooklink | elastic | the elastic";
const ME =
  "me | me off | me up | off | on me | on a fish | the hooklength | the hook length | the line | the rig | the hooklink | it | my line | my hooklength | my rig | my hook length | him";

const WHERE =
  "in the reeds | in the snag | in the snags | in the lilies | in the cage | in the tree roots | round a post | round the post | round the platform | under the platform | on the strike";

/** "the rig has gone in", "rig's gone" and "elastic's gone in" are no breakage. */
const isRigAway = (said: Said): boolean =>
  said.says("rig", "bottom", "elastic") &&
  !said.says("snapped", "broke", "broken", "smashed", "bust", "parted");

export const snapped: Phrase = {
  id: "snapped",
  patterns: [
    `[lost (${THE_FISH}) | <species> | a <species> | an <species> | big <species> | a big <species> | that <species>] [it | it's | he's | he | has | that's | it has | been | i've been] (snapped | broke | broken | smashed | smashed up | bust | busted) [${ME}] [${WHERE}] [that <species> | by a <species> | on a <species> | did that <species>]`,
    `[lost (${THE_FISH}) | <species>] (${LINE}) [just] (${BROKE}) [me] [on a <species> | on (${THE_FISH}) | on me]`,
    `[i've been | been | got | i] (snapped | broken | smashed | smashed up | snapped off | snapped up | broke | broke off | broken off) [off] by (${THE_FISH})`,
  ],
  examples: {
    "snapped me": [{ kind: "loss", cause: "snapped" }],
    "carp snapped me off": [{ kind: "loss", cause: "snapped", species: "carp" }],
    "hooklength's gone": [{ kind: "loss", cause: "snapped" }],
    "snapped by a good fish": [{ kind: "loss", cause: "snapped" }],
  },
  states: (said) =>
    isRigAway(said) || (said.says("broke", "broken") && said.items.length === 1)
      ? undefined
      : lossOf("snapped", said),
};
