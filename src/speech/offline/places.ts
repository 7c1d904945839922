/** Places in the grammar as built, where words may be put that are known only later. */
import type { Fsg, FsgArc } from "../../../grammar/fsg/fsg.ts";

/** A name of one word or more, and known words that it sounds like. */
export interface SpokenName {
  spoken: string;
  soundsLike?: string | undefined;
}

/** By the word that stands in a place: the names that take it. */
export type Names = Readonly<Record<string, readonly SpokenName[]>>;

/**
 * The words of a name. What is no letter and no digit parts them: the decoder's formats take "(2)",
 * "<s>" and more for their own signs, and the decoder breaks on them.
 */
export const wordsOf = (name: string): string[] =>
  name
    .toLowerCase()
    .split(/[^\p{L}\p{M}\p{N}'’-]+/u)
    .filter(Boolean);

/** Marks the words that stand in places. */
export const PLACE_PREFIX = "own_";

/**
 * Of a name that somebody took the trouble to add, against the chance of the place: it was seldom
 * seen when the grammar was weighed, yet will be said. Found by trial with `flite` voices.
 */
const MORE_LIKELY = 8;

/** Every place taken by each of its names; a place without names falls away. */
export function withNames(fsg: Fsg, names: Names): Fsg {
  let { states } = fsg;
  const arcs = fsg.arcs.flatMap((arc): FsgArc[] => {
    if (!arc.word?.startsWith(PLACE_PREFIX)) return [arc];
    return (names[arc.word] ?? []).flatMap(({ spoken }) => {
      const words = wordsOf(spoken);
      const row = [arc.from, ...words.slice(1).map(() => states++), arc.to];
      return words.map((word, index) => ({
        from: row[index] as number,
        to: row[index + 1] as number,
        chance: index === 0 ? Math.min(1, arc.chance * MORE_LIKELY) : 1,
        word,
      }));
    });
  });
  return { ...fsg, states, arcs };
}
