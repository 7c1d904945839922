/** Taking an entry back. */
import { type Phrase, sure } from "./phrase.ts";

const TAKE_OUT =
  "scratch | undo | delete | cancel | remove | forget | ignore | strike | wipe | scrub | scrap | rub out | take out | take off | take back | take away | get rid of | strike out | lose the entry for | cross out | drop the entry for | void | disregard | strike off | knock off | wipe out | erase | bin | clear";
const THE_LAST =
  "that | it | last | the last one | last one | that one | that last one | the last entry | last entry | that entry | the last fish | last fish | that fish | that last fish | the last | the last thing | that last entry | that last bit | what i just said | what i said | the previous one | the previous entry | previous | the last bit | my last | my last one | my last fish | my last entry | this one | that last";

export const withdraw: Phrase = {
  id: "withdraw",
  patterns: [
    `[no | no no | oh no | sorry | wait | please | can you | mistake | actually] (${TAKE_OUT}) (${THE_LAST}) [out | please | off | again | sorry | from the log]`,
    `[no | sorry | wait | can you | please] (take | scratch | wipe | cross | rub | knock | strike | put | leave) (${THE_LAST}) (out | off | back | away | out again)`,
    "[no | sorry | please | actually] (undo | scratch | cancel)",
    "(that was wrong | that's wrong | that's not right | wrong one | never mind that | that was a mistake | that didn't happen | my mistake scratch that | don't log that | don't count that | don't count that one | that one doesn't count | not that one | didn't mean that | disregard)",
    `[no | sorry | please | can you] (${TAKE_OUT}) [the] (fish | fish number | number | fish no) (<number> | one) [out | please | off]`,
    "[no | sorry | please] (take | scratch | wipe | cross | rub | strike | knock | leave) (fish | fish number | number) (<number> | one) (out | off | away | back)",
    "fish [number] (<number> | one) (needs taking out | needs to come out | wants taking out | should come out | out)",
    `[no | sorry | please | can you] (${TAKE_OUT}) [the] <ordinal> fish [out | please | off]`,
  ],
  examples: {
    "scratch that": [{ kind: "withdraw", of: "last" }],
    "take that out": [{ kind: "withdraw", of: "last" }],
    undo: [{ kind: "withdraw", of: "last" }],
    "that was wrong": [{ kind: "withdraw", of: "last" }],
    "take out fish four": [{ kind: "withdraw", of: 4 }],
    "take fish four out": [{ kind: "withdraw", of: 4 }],
    "fish ten needs taking out": [{ kind: "withdraw", of: 10 }],
    "delete the third fish": [{ kind: "withdraw", of: 3 }],
  },
  states(said) {
    const byNumber = said.says("fish", "number") || said.first("ordinal") !== undefined;
    const of =
      said.first("ordinal") ??
      said.first("number") ??
      (byNumber && endsInOne(said.words) ? 1 : "last");
    return of === "last" || (Number.isInteger(of) && of > 0)
      ? sure({ kind: "withdraw", of })
      : undefined;
  },
};

const endsInOne = (words: string): boolean => / (fish|number|no) one /.test(words);
