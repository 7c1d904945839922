/**
 * What a recogniser does to a line that was said well. The model, word by word and in this order,
 * each with the chance given beside it:
 *
 * - a number word is printed in digits ("forty five" as "45");
 * - a unit is printed in another of its spellings ("pounds" as "lb");
 * - a word is printed as another English word that sounds alike ("two" as "to");
 * - a word is printed twice;
 * - a word is dropped. What it said is lost, and no reader can know it: lines in which a number or a
 *   species is dropped cannot come out whole.
 *
 * Chances are of our own choice. The words that sound alike are dictionary homophones in southern
 * British English, from memory, written apart from the reader's table of misprints.
 */
import type { Random } from "../../../grammar/jsgf/sample.ts";

export interface Noise {
  digits: number;
  units: number;
  homophones: number;
  doubled: number;
  dropped: number;
}

export const QUIET: Noise = { digits: 0, units: 0, homophones: 0, doubled: 0, dropped: 0 };

export const AS_STATED: Noise = {
  digits: 0.3,
  units: 0.3,
  homophones: 0.05,
  doubled: 0.01,
  dropped: 0.01,
};

const SMALL =
  "nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

const UNITS: Readonly<Record<string, readonly string[]>> = {
  pounds: ["lb", "lbs", "pound"],
  pound: ["lb", "pounds"],
  ounces: ["oz", "ounce"],
  ounce: ["oz", "ounces"],
  kilos: ["kg", "kilograms"],
  kilo: ["kg", "kilogram"],
  grams: ["g", "grammes"],
  centimetres: ["cm", "centimeters"],
  metres: ["m", "meters"],
  metre: ["m", "meter"],
  inches: ["in", "inch"],
  feet: ["ft", "foot"],
  minutes: ["min", "mins"],
  degrees: ["°", "degree"],
};

const HOMOPHONES: Readonly<Record<string, readonly string[]>> = {
  one: ["won"],
  two: ["to", "too"],
  four: ["for", "fore"],
  eight: ["ate"],
  net: ["nett"],
  bite: ["byte"],
  bait: ["bate"],
  feet: ["feat"],
  missed: ["mist"],
  new: ["knew"],
  suns: ["sons"],
  which: ["witch"],
  break: ["brake"],
  bread: ["bred"],
  meat: ["meet"],
  paste: ["paced"],
  foul: ["fowl"],
  eel: ["heel"],
  ide: ["I'd"],
  rudd: ["rud"],
  mil: ["mill"],
  knock: ["nock"],
  hour: ["our"],
  weight: ["wait"],
  weighed: ["wade"],
  pole: ["poll"],
  by: ["buy"],
  in: ["inn"],
};

/** @param random the source of all chance in it */
export function noisy(line: string, noise: Noise, random: Random): string {
  const happens = (chance: number) => random() < chance;
  const pick = (of: readonly string[]) => of[Math.floor(random() * of.length)] as string;
  const sounded = numbersIn(line.split(" ")).flatMap((word): string[] => {
    const printed = happens(noise.digits) ? digits(word) : word;
    const spelt = happens(noise.units) && UNITS[printed] ? pick(UNITS[printed]) : printed;
    const heard = happens(noise.homophones) && HOMOPHONES[spelt] ? pick(HOMOPHONES[spelt]) : spelt;
    if (happens(noise.dropped)) return [];
    return happens(noise.doubled) ? [heard, heard] : [heard];
  });
  return sounded.join(" ");
}

/** "forty five" is one number and is printed as one. */
function numbersIn(words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const word of words) {
    const before = joined.at(-1) ?? "";
    const goesOn = TENS.includes(before) && SMALL.slice(1, 10).includes(word);
    if (goesOn) joined[joined.length - 1] = `${before} ${word}`;
    else joined.push(word);
  }
  return joined;
}

function digits(word: string): string {
  const [first = "", second] = word.split(" ");
  const small = SMALL.indexOf(first);
  if (small >= 0) return String(small);
  const tens = TENS.indexOf(first);
  if (tens < 0) return word;
  return String(10 * (tens + 2) + (second === undefined ? 0 : SMALL.indexOf(second)));
}
