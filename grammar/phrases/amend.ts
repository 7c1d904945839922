/**
 * Corrections. The words that announce one ("make that", "last one was") are a phrase of their own;
 * whatever is stated right after them becomes the new values. So every entry that can be said can
 * also be corrected, in the same words.
 */
import { GRAMS_PER_POUND as LB } from "../quantity/units.ts";
import { bareLength, given, type Phrase, type sure } from "./phrase.ts";

/** Announces that what follows corrects an entry; the numbers are those of fish. */
export const correction: Phrase = {
  id: "correction",
  patterns: [
    "<fix>",
    "[no | sorry | actually | no sorry | correction] (<last>) (<been>)",
    "[no | sorry | actually] (last one | last fish | that last one | the last one | the last fish)",
    "[no | sorry | actually] [change | correct | make | amend | set | edit | fix | alter] (<numbered>) (<number> | one) [<been> | to | is] [to]",
    "[put | have] (<numbered>) (<number> | one) [down] (as | at)",
    "[no | sorry | actually | it was] not [a | an | the] (<species> | <weight> | <length> | <bait> | <number> | fish)",
  ],
  examples: {
    "make that three pounds": [
      { kind: "amend", of: "last", set: { weightG: 3 * LB, unit: { weight: "lb" } } },
    ],
    "last one was a tench": [{ kind: "amend", of: "last", set: { species: "tench" } }],
    "last one, a skimmer": [{ kind: "amend", of: "last", set: { species: "skimmer" } }],
    "fish seven was forty-five centimetres": [
      { kind: "amend", of: 7, set: { lengthMm: 450, unit: { length: "cm" } } },
    ],
    "last one was a tench, not a bream": [{ kind: "amend", of: "last", set: { species: "tench" } }],
    "put fish ten down as a roach": [{ kind: "amend", of: 10, set: { species: "roach" } }],
    "not maggot, caster": [{ kind: "amend", of: "last", set: { bait: "caster" } }],
    "not a carp, an F1": [{ kind: "amend", of: "last", set: { species: "f1" } }],
  },
  states(said) {
    const byNumber = / (fish|number|no) (<number>|one) /.test(said.words);
    const of = byNumber ? said.number() : undefined;
    if (of !== undefined && (!Number.isInteger(of) || of < 1)) return undefined;
    const mildly = said.words === " no " ? (true as const) : undefined;
    const negates = said.says("not") ? (true as const) : undefined;
    return { statements: [], corrects: of ?? "last", ...given({ negates, mildly }) };
  },
};

/** A longer length was never a fish's; it is how far out. */
const LONGEST_FISH_MM = 2500;

/** What may be said so briefly only as a correction. */
export const correctedSize: Phrase = {
  id: "corrected-size",
  patterns: [
    "[about | a | an | nearly | more like | closer to] (<length> | <weight> <length> | <number> <number> | <number>) [long | not <weight> | not <length> | not <number>]",
  ],
  examples: {
    "make that forty-five centimetres": [
      { kind: "amend", of: "last", set: { lengthMm: 450, unit: { length: "cm" } } },
    ],
    "make that two eight": [
      { kind: "amend", of: "last", set: { weightG: 2.5 * LB, unit: { weight: "lb" } } },
    ],
    "make that three pounds, forty-five centimetres": [
      {
        kind: "amend",
        of: "last",
        set: { weightG: 3 * LB, lengthMm: 450, unit: { weight: "lb", length: "cm" } },
      },
    ],
    "make that three": [
      { kind: "amend", of: "last", set: { weightG: 3 * LB, unit: { weight: "lb" } } },
    ],
  },
  states(said) {
    const approx = said.says("about", "nearly") ? (true as const) : undefined;
    const length = said.first("length");
    if (length) {
      const unit = { length: length.unit };
      if (length.mm > LONGEST_FISH_MM) return only({ kind: "change", distanceMm: length.mm, unit });
      return only({ kind: "fish", lengthMm: length.mm, ...given({ approx }), unit });
    }
    const [pounds, ounces = 0] = said.all("number");
    if (pounds === undefined || pounds <= 0 || pounds > 100) return undefined;
    if (pounds > 15 && said.all("number").length === 1) {
      const read = bareLength(said);
      if (!read) return undefined;
      return only(
        { kind: "fish", lengthMm: read.mm, unit: { length: read.unit } },
        "a bare number",
      );
    }
    const weightG = (pounds + ounces / 16) * LB;
    const fish = {
      kind: "fish" as const,
      weightG,
      ...given({ approx }),
      unit: { weight: "lb" as const },
    };
    return ounces > 0 ? only(fish) : only(fish, "a bare number");
  },
};

export const correctedFoul: Phrase = {
  id: "corrected-foul",
  patterns: ["[a | an] (foul hooked | foul hooker)"],
  examples: {
    "make that foul hooked": [{ kind: "amend", of: "last", set: { foul: true } }],
  },
  states: () => only({ kind: "fish", foul: true }),
};

const only = (statement: Parameters<typeof sure>[0], ...doubts: string[]) => ({
  statements: [statement],
  onlyCorrects: true as const,
  doubts,
});
