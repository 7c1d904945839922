/** How far out: set, or further or closer by so much. Poles are measured in metres. */
import type { Phrase, Said } from "./phrase.ts";

const GO =
  "going | gone | go | come | coming | came | moved | moving | move | shipping | shipped | i'm | i'm going | back | fishing | now | straight | right | switched | pushed | push | changed | over | drop back | pushing | pushing it | dropped back | on | feeding | fishing it | switching | we're | gone back | come back | moved back | stepping | stepped | dropping | dropping back | short | up | down | short line | long line | down the margin | down the edge | in the margin | margin line";
const OUT_TO =
  "out to | in to | into | out at | to | at | back to | back at | on to | onto | out on | on | over to | short to | short at | up to | down to | back out to | back in to | along to | out on the | on the | onto the | back on the | back to the | to the | out to the | at about | out to about | the | with | on my | along the";

export const distance: Phrase = {
  id: "distance",
  patterns: [
    `[${GO}] (${OUT_TO}) (<metres>) [out | line | of pole | now | swim | mark | on the pole | pole | long pole | away | short | again | down the edge | down the margin | from the bank]`,
    `[${GO}] (out to | out at | in to | back out to | back in to) (<number>) [now]`,
    "[the | my | set | new] (distance | distance's) [is | is now | now | to | at | of | set to | changed to | out to | about] (<metres> | <number>) [out | now]",
    "[fishing | now fishing | i'm fishing | now | about | fish | we're fishing] [at | the | on the | my] <metres> (out | line | out on the pole | of pole | of pole out | on the pole | from the bank | pole line | away | mark) [now]",
    "(fishing | now fishing) [at | about] (<metres>) [now]",
    "[moved | changed] [my | the | this] (line | swim | line's) [is | at | to | now | now at] <metres> [now | out]",
    "<metres> [at | now at]",
  ],
  examples: {
    "out to eleven metres": [{ kind: "change", distanceMm: 11_000, unit: { length: "m" } }],
    "out to thirteen": [{ kind: "change", distanceMm: 13_000, unit: { length: "m" } }],
    "distance six metres": [{ kind: "change", distanceMm: 6000, unit: { length: "m" } }],
    "distance 13": [{ kind: "change", distanceMm: 13_000, unit: { length: "m" } }],
    "thirteen metres out": [{ kind: "change", distanceMm: 13_000, unit: { length: "m" } }],
    "line at ten metres": [{ kind: "change", distanceMm: 10_000, unit: { length: "m" } }],
    "thirteen metres": [{ kind: "change", distanceMm: 13_000, unit: { length: "m" } }],
    "fishing six metres": [{ kind: "change", distanceMm: 6000, unit: { length: "m" } }],
  },
  states(said) {
    const read = metres(said);
    if (!read || read.mm < (said.items.length > 1 ? LEAST_MM : LEAST_BARE_MM)) return undefined;
    if (IMPERIAL.has(read.unit) && !said.says("out", "out to", "away", "from the bank"))
      return undefined;
    return {
      statements: [{ kind: "change", distanceMm: read.mm, unit: { length: read.unit } }],
      doubts: read.mm > MOST_MM ? ["an unlikely distance"] : [],
    };
  },
};

/** Feet and inches are how deep, unless it is said that they are how far: poles come in metres. */
const IMPERIAL = new Set(["ft", "in"]);

/** Nearer than this a length is a depth; further than the longest pole with its line it is a slip. */
const LEAST_MM = 1000;
/** A bare length this long can be nothing but how far out. */
const LEAST_BARE_MM = 5000;
const MOST_MM = 25_000;

/** A length, or a bare number, which for a pole can only be metres. */
function metres(said: Said) {
  const length = said.first("length");
  if (length) return length;
  const number = said.first("number");
  return number === undefined ? undefined : { mm: number * 1000, unit: "m" as const };
}

const FURTHER =
  "further out | further | farther | farther out | out | longer | further away | further back | more out | out further | past it | past that | further over | past the feed";
const CLOSER =
  "closer | closer in | nearer | in | back in | nearer in | shorter | short | closer to me | back | in closer | further in | nearer the bank | in nearer | back towards me";

export const distanceBy: Phrase = {
  id: "distance-by",
  patterns: [
    `[<moved>] [a | another | about | out | by | in] <metres> (${FURTHER}) [now]`,
    `[<moved>] [a | another | about | by] <metres> (${CLOSER}) [now]`,
    "[<moved>] (out | further | further out | out by | further by | further out by | out another | out by another | another | out a further | back out) [by] [another] <metres> [further | more | further out]",
    "[<moved>] (come in | coming in | come in by | coming in by | came in | came in by | closer by | closer in by | nearer by | gone in | gone in by | closer | in by | moved in | moved in by | in another | come back in | come back | come back by | drop in by | in | closer by another | come in another | dropped short by | dropped short | shortened by | gone back in) [by] [another] <metres> [closer | nearer]",
  ],
  examples: {
    "a metre further out": [{ kind: "change", distanceByMm: 1000, unit: { length: "m" } }],
    "a metre closer": [{ kind: "change", distanceByMm: -1000, unit: { length: "m" } }],
    "gone out another metre": [{ kind: "change", distanceByMm: 1000, unit: { length: "m" } }],
    "come in two metres": [{ kind: "change", distanceByMm: -2000, unit: { length: "m" } }],
  },
  states(said) {
    const length = said.first("length");
    if (!length) return undefined;
    const closer =
      said.says("in", "closer", "nearer", "shorter", "short", "back", "shortened") &&
      !said.says("out", "further", "farther", "longer");
    return {
      statements: [
        {
          kind: "change",
          distanceByMm: closer ? -length.mm : length.mm,
          unit: { length: length.unit },
        },
      ],
    };
  },
};
