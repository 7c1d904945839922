/** Places for the angler's own words in the grammar of the ears, which is built before they are known. */
import type { OwnWord, OwnWords } from "../vocabulary/vocabulary.ts";

type OwnKind = keyof OwnWords;

/** Stands in the grammar where a word of the angler's own may be said. */
const PLACES: Readonly<Record<OwnKind, string>> = {
  species: "own_species",
  baits: "own_bait",
  rigs: "own_rig",
};

/** Own words with which a grammar is built so that others can be put in their places. */
export const PLACEHOLDERS: OwnWords = Object.fromEntries(
  Object.entries(PLACES).map(([kind, place]) => [kind, [{ name: place, spoken: [place] }]]),
);

/** A way of saying a name, and known words that it sounds like. */
export interface SpokenName {
  spoken: string;
  soundsLike?: string | undefined;
}

/** The names and the other ways they are spoken, by the place they take. */
export const namesByPlace = (own: OwnWords): Record<string, SpokenName[]> =>
  Object.fromEntries(
    (Object.keys(PLACES) as OwnKind[]).map((kind) => [
      PLACES[kind],
      (own[kind] ?? []).flatMap(waysOf),
    ]),
  );

/** What it sounds like is told of the name itself. */
const waysOf = ({ name, spoken, soundsLike }: OwnWord): SpokenName[] => [
  { spoken: name, soundsLike },
  ...[...new Set(spoken)].filter((way) => way !== name).map((way) => ({ spoken: way })),
];
