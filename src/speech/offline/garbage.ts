/** A way out for talk that is none of the phrases: any row of single sounds. */
import type { Fsg } from "./fsg.ts";

/** The names of the sounds are words of their own; none of them is English. */
const PREFIX = "sound_";

/** The word for a phone of the model. */
export const garbageWord = (phone: string): string => `${PREFIX}${phone.toLowerCase()}`;

export const hasGarbage = (text: string): boolean => text.includes(PREFIX);

/**
 * Puts a loop over all phones beside the phrases, between a start and an end of its own: what fits
 * no phrase well enough goes through it, whole, and is refused.
 * @param chance of entering the loop, and of each further sound; the greater, the more is refused
 */
export function withGarbage(fsg: Fsg, phones: readonly string[], chance: number): Fsg {
  const start = fsg.states;
  const loop = start + 1;
  const final = start + 2;
  const sounds = (from: number) =>
    phones.map((phone) => ({ from, to: loop, chance, word: garbageWord(phone) }));
  const steps = [
    { from: start, to: fsg.start, chance: 1 },
    { from: fsg.final, to: final, chance: 1 },
    { from: loop, to: final, chance: 1 },
  ];
  const arcs = [...fsg.arcs, ...sounds(start), ...sounds(loop), ...steps];
  return { states: final + 1, start, final, arcs };
}
