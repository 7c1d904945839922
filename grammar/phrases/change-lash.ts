/** The line between pole tip and float: set, or longer or shorter by so much. */
import { bareLength, type Phrase } from "./phrase.ts";

const LASH =
  "lash | lash line | line above the float | line to the float | line from tip to float | line between tip and float | line between the tip and the float | line above float | line to pole tip | line from pole tip | line from the pole tip to the float | line above";
const SET =
  "is | is now | now | set to | set at | to | at | of | down to | up to | should be | about | set | changed to | shortened to | lengthened to | at about | cut to | cut down to | is set to | now set to | cut back to | is about | is down to | length";
const LONGER = "more | longer | of extra | extra | added | lengthened";

export const lash: Phrase = {
  id: "lash",
  patterns: [
    `[set | the | set the | my | changed | changed the | change the | new | put the | cut the | change] (lash | lash's | lash line | line above the float | line above float | line between tip and float | line to the float | last line) [${SET}] (<length> | <number>) [now | long | above the float | of line]`,
    `(shortened | shorten | lengthened | lengthen | cut | reduced | increased | extended) [the | my] (lash | lash line | line above the float) [down | back | up] to <length>`,
    `[with | now | got | about | i've got | i'm on | on | on a | a | using | running | fishing | fishing with | put | fishing with a] [a | about] <length> [of] (${LASH} | above the float | from tip to float | between tip and float | between the tip and the float) [now]`,
  ],
  examples: {
    "lash twenty centimetres": [{ kind: "change", lashMm: 200, unit: { length: "cm" } }],
    "shortened the lash to six inches": [{ kind: "change", lashMm: 152.4, unit: { length: "in" } }],
    "lash thirty": [{ kind: "change", lashMm: 300, unit: { length: "cm" } }],
    "six inches of line above the float": [
      { kind: "change", lashMm: 152.4, unit: { length: "in" } },
    ],
  },
  states(said) {
    const read = bareLength(said);
    return (
      read && {
        statements: [{ kind: "change", lashMm: read.mm, unit: { length: read.unit } }],
        doubts: read.doubts,
      }
    );
  },
};

export const lashBy: Phrase = {
  id: "lash-by",
  patterns: [
    `[about | another | add | added | adding | put | with | give it | gone] [another | about | an extra] <length> (${LONGER}) [of] (${LASH})`,
    `[about | another | took | taken | take | with | gone | knocked | cut] [another | about] <length> (less | shorter | off | off the | off my | less on the | of) (${LASH})`,
    `[the | my] (${LASH}) [is | by | now | made | made it] <length> (longer | shorter | more | less) [now]`,
    `(lengthened | lengthen | lengthening | shortened | shorten | shortening | extended | extend | cut | extending | shorter | longer) [the | my | down the | back the] (${LASH}) [by | down by | back by | down | back] [another | about] <length>`,
    `[the | my] (${LASH}) (longer by | shorter by | up by | down by | longer | shorter) <length>`,
    `(added | add | adding | put) <length> (of | on the | to the | more) (${LASH})`,
  ],
  examples: {
    "ten centimetres more lash": [{ kind: "change", lashByMm: 100, unit: { length: "cm" } }],
    "ten centimetres less lash": [{ kind: "change", lashByMm: -100, unit: { length: "cm" } }],
    "lash ten centimetres longer": [{ kind: "change", lashByMm: 100, unit: { length: "cm" } }],
    "shortened the lash by two inches": [
      { kind: "change", lashByMm: -50.8, unit: { length: "in" } },
    ],
    "lash longer by ten centimetres": [{ kind: "change", lashByMm: 100, unit: { length: "cm" } }],
    "added ten centimetres to the lash": [
      { kind: "change", lashByMm: 100, unit: { length: "cm" } },
    ],
  },
  states(said) {
    const length = said.first("length");
    if (!length) return undefined;
    const shorter = said.says(
      "less",
      "shorter",
      "off",
      "shortened",
      "shorten",
      "shortening",
      "cut",
      "down by",
    );
    const longer = said.says(
      "more",
      "longer",
      "extra",
      "added",
      "add",
      "adding",
      "put",
      "lengthened",
      "lengthen",
      "lengthening",
      "extended",
      "extend",
      "extending",
      "up by",
    );
    if (shorter === longer) return undefined;
    return {
      statements: [
        {
          kind: "change",
          lashByMm: shorter ? -length.mm : length.mm,
          unit: { length: length.unit },
        },
      ],
    };
  },
};
