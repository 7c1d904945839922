/** A new keepnet, or one by its number. */
import { given, type Phrase, sure } from "./phrase.ts";

const INTO =
  "i'm starting | i've started | that's me on | fish are going in | they're going in | put | put in | on to | onto | into | in to | in | to | now | starting | started | start | starting on | going into | going to | going in | going onto | gone into | gone to | gone onto | switch to | switched to | switching to | switch into | switching into | changed to | changing to | change to | changing into | changed into | back to | back in | back into | using | use | this is | fish going in | fish going into | moving to | moving onto | moved to | moving on to | we're on | i'm on | i'm on to | on | filling | opening | swap to | swapping to | swapped to | swapped into | that's | putting them in | putting fish in | now on | now in | now using | got | i'm using | it's | next one in";
const FRESH =
  "new | another | next | fresh | different | the new | the next | a new | a fresh | another new | the other | clean | a different | my next";

export const net: Phrase = {
  id: "net",
  patterns: [
    `[${INTO}] (${FRESH}) [keep] (net | keepnet) [in | please | started | going in | in the water | in use | from now | from here]`,
    "[i've | i'm | just] (changed | changing | change | swapped | swapping | swap | switched | switching | switch) [of | the | over | my] (net | nets | keepnet | keepnets)",
    `[${INTO}] [the | my | a] (net | keepnet) [number] (<number> | one) [in | please | started | going in | in the water | now | in use]`,
    "[i've] (changed nets | new net | changed net | swapped nets) [this is] [number | net] (<number> | one)",
    "(net's | net) [is | has] (changed | swapped | switched) to [number] (<number> | one)",
    `[${INTO}] [the | my | a] <ordinal> (net | keepnet) [in | please | started | going in | now]`,
  ],
  examples: {
    "new net": [{ kind: "net" }],
    "changed nets": [{ kind: "net" }],
    "net three": [{ kind: "net", number: 3 }],
    "changed nets, this is number four": [{ kind: "net", number: 4 }],
    "net's changed to number two": [{ kind: "net", number: 2 }],
    "onto the second net": [{ kind: "net", number: 2 }],
  },
  states(said) {
    const number = said.first("ordinal") ?? said.number();
    if (number !== undefined && (!Number.isInteger(number) || number < 1)) return undefined;
    return sure({ kind: "net", ...given({ number }) });
  },
};
