/**
 * Ways of saying a word beside the dictionary's American ones, by rules that hold for whole families
 * of words (J. C. Wells, Accents of English, 1982, ch. 2 and 4; from memory). The model has American
 * sounds only, so each is the nearest of those.
 */
import type { Dictionary } from "./pronounce.ts";

export const ACCENTS = ["dictionary", "southern", "northern"] as const;
export type Accent = (typeof ACCENTS)[number];

type Phones = readonly string[];
type Rule = (word: string, phones: Phones) => Phones;

/** Words with the short vowel in American speech and that of "father" in the south. */
const BATH =
  /^(half|last|past|fast|after|path|bath|grass|glass|class|caster|plant|ask|can't|chance|branch|rather|laugh|draft|shaft|task|basket)(s|'s|ed|ing|ly)?$/;
const VOWEL = /^(AA|AE|AH|AO|AW|AY|EH|ER|EY|IH|IY|OW|OY|UH|UW)$/;

/** No r but before a vowel: "four", "barbel", "deeper", "clear". */
const dropR: Rule = (_, phones) =>
  phones.flatMap((phone, index) => {
    const [before, next] = [phones[index - 1] ?? "", phones[index + 1] ?? ""];
    if (VOWEL.test(next)) return [phone];
    if (phone === "R" && VOWEL.test(before)) return /^A[AO]$/.test(before) ? [] : ["AH"];
    // That of "bird" stands first in its word or right after its first sound.
    return phone === "ER" && index > 1 ? ["AH"] : [phone];
  });

/** "half" and "caster" with the vowel of "father". */
const broadA: Rule = (word, phones) => (BATH.test(word) ? replaced(phones, "AE", "AA") : phones);

/** "lost", "pot" and "rod" with rounded lips. */
const roundO: Rule = (word, phones) =>
  /o[^aeiourwy]/.test(word) ? replaced(phones, "AA", "AO") : phones;

/** "cup", "lunch" and "one" with the vowel of "foot". */
const highU: Rule = (word, phones) => {
  if (!/u[^aeiour]|^(one|once|some|come|done|nothing|another|other)$/.test(word)) return phones;
  const first = phones.findIndex((phone) => VOWEL.test(phone));
  return phones.map((phone, index) => (index === first && phone === "AH" ? "UH" : phone));
};

/** "hook" and "half" without their h. */
const dropH: Rule = (_, phones) => (phones[0] === "HH" ? phones.slice(1) : phones);

const RULES: Readonly<Record<Accent, readonly Rule[]>> = {
  dictionary: [],
  southern: [dropR, broadA, roundO],
  northern: [dropR, roundO, highU, dropH],
};

/** The dictionary with an accent's ways after its own. */
export function withAccent(dictionary: Dictionary, accent: Accent): Dictionary {
  const rules = RULES[accent];
  if (rules.length === 0) return dictionary;
  return new Map(
    Array.from(dictionary, ([word, ways]) => {
      const more = ways.map((way) =>
        rules.reduce((phones: Phones, rule) => rule(word, phones), way.split(" ")).join(" "),
      );
      return [word, [...new Set([...ways, ...more])]];
    }),
  );
}

const replaced = (phones: Phones, from: string, to: string): Phones =>
  phones.map((phone) => (phone === from ? to : phone));
