/** The angler's own words: places for them in the grammar as built, and the words put there later. */
import type { OwnWords } from "../vocabulary/vocabulary.ts";
import type { Fsg, FsgArc } from "./fsg.ts";

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

/** Every place taken by each of the names of its kind; a place without names falls away. */
export function withOwnWords(fsg: Fsg, own: OwnWords): Fsg {
  let { states } = fsg;
  const arcs = fsg.arcs.flatMap((arc): FsgArc[] => {
    const kind = (Object.keys(PLACES) as OwnKind[]).find((kind) => PLACES[kind] === arc.word);
    if (kind === undefined) return [arc];
    const names = (own[kind] ?? []).flatMap(({ spoken }) => spoken);
    return names.flatMap((name) => {
      const words = name.toLowerCase().split(/\s+/);
      const between = words.slice(1).map(() => states++);
      const row = [arc.from, ...between, arc.to];
      return words.map((word, index) => ({
        from: row[index] as number,
        to: row[index + 1] as number,
        chance: index === 0 ? arc.chance : 1,
        word,
      }));
    });
  });
  return { ...fsg, states, arcs };
}
