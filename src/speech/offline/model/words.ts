/** How the words of the grammar are said: what the build hands to the ears instead of a dictionary. */
import type { Pronounced } from "../decoder.ts";
import { parseFsg } from "../fsg.ts";
import { PLACE_PREFIX } from "../places.ts";
import { type Dictionary, pronounce } from "../pronounce.ts";
import { TRADE_WORDS } from "../trade-words.ts";

/**
 * Every word of the grammar with each of its ways. Throws where nobody can tell how one is said: it
 * belongs into the trade's list then.
 * @param grammar FSG text
 */
export function wordsOfGrammar(grammar: string, model: Dictionary): Pronounced[] {
  const dictionary = new Map([...model, ...Object.entries(TRADE_WORDS)]);
  const words = new Set(parseFsg(grammar).arcs.flatMap(({ word }) => word ?? []));
  return [...words]
    .filter((word) => !word.startsWith(PLACE_PREFIX))
    .flatMap((word) => {
      const ways = pronounce(word, dictionary);
      if (ways.length === 0) throw new Error(`Nobody can tell how "${word}" is said.`);
      return ways.map((way): Pronounced => [word, way]);
    });
}

/** As `parseDictionary` reads it. */
export const printWords = (words: readonly Pronounced[]): string =>
  words.map(([word, way]) => `${word} ${way}\n`).join("");
