/**
 * Any row of single sounds, with no grammar at all: what a decoder bound to phrases is held against.
 * Where loose sounds fit much better than the best phrase, what was said was none of them.
 */
import type { Fsg } from "../../../grammar/fsg/fsg.ts";
import type { Pronounced } from "./decoder.ts";
import { printFsg } from "./fsg.ts";

/** The phones of the model (ARPAbet) that speech is made of. */
const PHONES =
  "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(
    " ",
  );

/** Of each further sound. The limits of `fit.ts` were found with this one. */
const CHANCE = 0.3;

/** The sounds' names are words of their own; none of them is English. */
const nameOf = (phone: string): string => `sound_${phone.toLowerCase()}`;

export const LOOP_DICTIONARY: readonly Pronounced[] = PHONES.map((phone) => [nameOf(phone), phone]);

export function phoneLoop(): string {
  const sounds = PHONES.map((phone) => ({ from: 0, to: 0, chance: CHANCE, word: nameOf(phone) }));
  const loop: Fsg = {
    states: 2,
    start: 0,
    final: 1,
    arcs: [...sounds, { from: 0, to: 1, chance: 1 }],
  };
  return printFsg(loop);
}
