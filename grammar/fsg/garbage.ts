/** A way out for talk that is none of the phrases: any row of single sounds. */
import type { Fsg } from "./fsg.ts";

/** The names of the sounds are words of their own; none of them is English. */
const PREFIX = "sound_";

/** The word for a phone of the model. */
export const garbageWord = (phone: string): string => `${PREFIX}${phone.toLowerCase()}`;

export const hasGarbage = (text: string): boolean => text.includes(PREFIX);

/**
 * Puts a loop over all phones beside the phrases, entered from the start only: what fits no phrase
 * well enough goes through it, and is refused.
 * @param chance of entering the loop, and of each further sound; the greater, the more is refused
 */
export function withGarbage(fsg: Fsg, phones: readonly string[], chance: number): Fsg {
  const loop = fsg.states;
  const sounds = (from: number) =>
    phones.map((phone) => ({ from, to: loop, chance, word: garbageWord(phone) }));
  const arcs = [
    ...fsg.arcs,
    ...sounds(0),
    ...sounds(loop),
    { from: loop, to: fsg.final, chance: 1 },
  ];
  return { ...fsg, states: loop + 1, arcs };
}
