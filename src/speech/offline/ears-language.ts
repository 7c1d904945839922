/** The words and the grammar that the decoder is given, with the angler's own words in them. */
import type { Pronounced } from "./decoder.ts";
import { parseFsg, printFsg } from "./fsg.ts";
import { garbageWord, withGarbage } from "./garbage.ts";
import { type Names, withNames } from "./places.ts";
import { type Dictionary, pronounce } from "./pronounce.ts";
import { withMore } from "./sequence.ts";

/** The phones of the model (ARPAbet) that speech is made of. */
const PHONES =
  "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(
    " ",
  );

export interface Leanings {
  /** Towards taking sounds for talk; more refuses more talk, and more phrases. */
  garbage: number;
  /** Towards several statements in a breath. */
  more: number;
}

/** Found by measurement: see DEVELOPERS.md. */
export const USUAL_LEANINGS: Leanings = { garbage: 0.02, more: 1e-12 };

export interface Language {
  fsg: string;
  dictionary: Pronounced[];
  /** Own words nobody could tell how to say: they can't be heard. */
  unspeakable: string[];
}

/** @param fsg the grammar as built, with places for own words */
export function languageOf(
  fsg: string,
  dictionary: Dictionary,
  own: Names = {},
  leanings: Leanings = USUAL_LEANINGS,
): Language {
  const bound = withMore(withNames(parseFsg(fsg), own), leanings.more);
  const words = [...new Set(bound.arcs.flatMap(({ word }) => word ?? []))];
  const ways = words.map((word) => [word, pronounce(word, dictionary)] as const);
  const unspeakable = ways.filter(([, ways]) => ways.length === 0).map(([word]) => word);
  const heard = {
    ...bound,
    arcs: bound.arcs.filter(({ word }) => word === undefined || !unspeakable.includes(word)),
  };
  const pronounced = ways.flatMap(([word, ways]) => ways.map((way) => [word, way] as const));
  const garbage = PHONES.map((phone) => [garbageWord(phone), phone] as const);
  return {
    fsg: printFsg(withGarbage(heard, PHONES, leanings.garbage)),
    dictionary: [...pronounced, ...garbage],
    unspeakable,
  };
}
