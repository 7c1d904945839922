/** The words and the grammar that the decoder is given, with the angler's own words in them. */
import type { Pronounced } from "./decoder.ts";
import { parseFsg, printFsg } from "./fsg.ts";
import { type Names, withNames } from "./places.ts";
import { type Dictionary, pronounce } from "./pronounce.ts";

export interface Language {
  fsg: string;
  dictionary: Pronounced[];
  /** Own words nobody could tell how to say: they can't be heard. */
  unspeakable: string[];
}

/** @param fsg the grammar as built, with places for own words */
export function languageOf(fsg: string, dictionary: Dictionary, own: Names = {}): Language {
  const bound = withNames(parseFsg(fsg), own);
  const words = [...new Set(bound.arcs.flatMap(({ word }) => word ?? []))];
  const ways = words.map((word) => [word, pronounce(word, dictionary)] as const);
  const unspeakable = new Set(ways.filter(([, ways]) => ways.length === 0).map(([word]) => word));
  const heard = {
    ...bound,
    arcs: bound.arcs.filter(({ word }) => word === undefined || !unspeakable.has(word)),
  };
  const pronounced = ways.flatMap(([word, ways]) => ways.map((way) => [word, way] as const));
  return {
    fsg: printFsg(heard),
    dictionary: pronounced,
    unspeakable: [...unspeakable],
  };
}
