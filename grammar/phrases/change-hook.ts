/** The hook, and the bait on it. */
import { given, type Phrase, sure } from "./phrase.ts";

const PUT =
  "put | tied on | tied | change to | changed to | put on | gone to | going to | gone down to | gone up to | down to | up to | onto | on to | on | using | now on | now | switched to | switching to | changing to | smaller hook | bigger hook | going down to | going up to | go to | go down to | go up to | dropped to | dropped down to | stepped up to | swapped to | try | trying | back to | back on | fishing | it's | got | with | stepping up to | stepping down to | moved to | changed down to | changed up to | drop down to | swap to | back up to | back down to | fine down to | fined down to | scaled down to | stepped down to | smaller | bigger | gone smaller | gone bigger | tying on";

export const hook: Phrase = {
  id: "hook",
  patterns: [
    `[new | the | my | changed | changing | put | ${PUT}] [a | an | the | on a | on an] [smaller | bigger | new | fresh] hook [now | size | is | is now | to | to a | to an | now a | number | down to | up to | to size | to a size | is a | down to a | up to a | sizes | now size | a size] [size | a] <number> [on | now]`,
    `[${PUT}] [a | an | the] [new | smaller | bigger] (size | sized) <number> [hook | hooks | hooklength | hook length] [on | now | instead]`,
    `[${PUT}] [a | an | the] [new | smaller | bigger | number] <number> (hook | hooks | hooklength | hook length) [on | now | instead]`,
    "(changed the hook to | changed hook to | changing hook to | changing the hook to | change the hook to | change hook to | changed the hook for | changed hooks to) [a | an] [size | smaller | bigger] [a] <number> [on | now | hook]",
    "(stepped | dropped | took | taken | brought) [the] hook (down to | up to) [a | an] <number>",
    "[new | changed | the] (hook | hook's | hooks) (stepped down to | down to | up to | it's | is now | is) [a | an] <number>",
    "hook's (a | an) <number>",
    "(tied on | tied | tying on | put on | onto | switched to | changed to | gone to | gone down to | gone up to | going down to | going up to) [a | an] <number>",
    "(up to | down to | back to) (a | an) <number>",
    "(new hook | changed hook | changed the hook | changed hooks | smaller hook | bigger hook | new hooklength | fresh hooklength | changed hooklength | changed the hooklength | new hook length | put a new hook on | put a bigger hook on | put a smaller hook on | fresh hook)",
  ],
  examples: {
    "hook size sixteen": [{ kind: "change", hook: 16 }],
    "size sixteen hook": [{ kind: "change", hook: 16 }],
    "gone down to an eighteen hook": [{ kind: "change", hook: 18 }],
    "stepped the hook down to a sixteen": [{ kind: "change", hook: 16 }],
    "hook's an eighteen": [{ kind: "change", hook: 18 }],
    "hook down to an eighteen": [{ kind: "change", hook: 18 }],
    "tied on an eighteen": [{ kind: "change", hook: 18 }],
    "changed the hook for a sixteen": [{ kind: "change", hook: 16 }],
    "up to a fourteen": [{ kind: "change", hook: 14 }],
    "smaller hook": [{ kind: "change" }],
  },
  states(said) {
    const size = said.first("number");
    if (size === undefined) {
      return { statements: [{ kind: "change" }], doubts: ["the hook's size was not said"] };
    }
    if (!Number.isInteger(size) || size < 1) return undefined;
    const unlikely = size > 30 || size % 2 === 1;
    return {
      statements: [{ kind: "change", hook: size }],
      doubts: unlikely ? ["an unlikely hook size"] : [],
    };
  },
};

export const bait: Phrase = {
  id: "hook-bait",
  patterns: [
    "(<switched>) [the | a | an | some | my | a bit of | double | single | one | a piece of | two | piece of | a grain of | just | bit of] <bait> [on | on the hook | now | instead | again | on the hook now | for bait | hook bait]",
    "(bait change | hookbait change | change of bait | new bait | bait switch | different bait) [to] <bait>",
    "[a | the | single | double | piece of | a piece of | bit of | a bit of | now | just | got | got a | i've got | one | back to] <bait> (on | on the hook | on the hair | on a hair | in the band | in a band | hook bait | on now | as hook bait | for hook bait | hookbait | for bait | on hook | as bait)",
    "[hook | changed | change of | change | changing | the | my | changed the | change the | hook's | swapped | new | changing the | changed hook | changed my] (bait | bait's | hookbait | hookbait's) [is | is now | now | to | changed to | to a | is a | to the | now a | for] [a | the | double | some] <bait> [now | on the hook]",
    "(i'll give | giving | give | gonna give | going to give | let's give) [the | some] <bait> a (go | try | whirl)",
    "(swapped | swapping | changed | changing | switched) [the | my] <bait> for [the | some | a] <bait>",
    "(baiting up with | baited with | baited up with | baited | baiting with | hooking) [a | the] <bait>",
    "<bait> (instead | this time | for a change)",
    "<bait> off <bait> on",
    "(taking | took | taken) [the | my] <bait> off [putting | put] <bait> on",
    "with <bait> on",
    "(put | stuck | put on | sticking | putting | popped | got | tried | stick) [a | some | a bit of | two | a piece of | the | double | one] <bait> on [the hook | now]",
  ],
  examples: {
    "on the worm": [{ kind: "change", bait: "worm" }],
    "red six mil pellet on the hook": [{ kind: "change", bait: "pellet", baitNote: "red six mil" }],
    "bait change, caster": [{ kind: "change", bait: "caster" }],
    "changed bait to corn": [{ kind: "change", bait: "corn" }],
    "I'll give caster a go": [{ kind: "change", bait: "caster" }],
    "swapped worm for corn": [{ kind: "change", bait: "corn" }],
    "baiting up with meat": [{ kind: "change", bait: "meat" }],
    "white maggot instead": [{ kind: "change", bait: "maggot", baitNote: "white" }],
    "taking the maggot off, putting bread on": [{ kind: "change", bait: "bread" }],
    "worm off, maggot on": [{ kind: "change", bait: "maggot" }],
    "with corn on": [{ kind: "change", bait: "corn" }],
    "put a wafter on": [{ kind: "change", bait: "wafter" }],
  },
  states(said) {
    const read = said.all("bait").at(-1);
    return read && sure({ kind: "change", bait: read.id, ...given({ baitNote: read.note }) });
  },
};

/** Only the bait's name: most likely what is on the hook now. */
export const bareBait: Phrase = {
  id: "bare-bait",
  patterns: ["[a | the | some | piece of | a piece of | a bit of | a cube of | cube of] <bait>"],
  examples: {
    "make that caster": [{ kind: "amend", of: "last", set: { bait: "caster" } }],
    "double corn": [{ kind: "change", bait: "corn", baitNote: "double" }],
  },
  states(said) {
    const read = bait.states(said);
    return read && { ...read, doubts: ["hook bait or feed was not said"] };
  },
};
