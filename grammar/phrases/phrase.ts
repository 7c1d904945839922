/** What a phrase is: everything that is known of one way of saying something, in one entry. */
import type { Item, SlotName, SlotValues } from "../match/items.ts";
import type { LengthUnit, Statement, Target } from "../statement.ts";

/** What a phrase makes of the words it matched. */
export interface Stated {
  statements: Statement[];
  /** Why a second look is wanted, in words; none means it is sure. */
  doubts?: string[];
  /** The words announce that what follows corrects this entry. */
  corrects?: Target;
  /** So slight an announcement ("no") that a lost fish after it is news, not a correction. */
  mildly?: true;
  /** Says outright that it is one more: "lost another". */
  isAnother?: true;
  /** Says only what it was not: "not a bream". */
  negates?: true;
  /** Said so briefly that it counts only as part of a correction. */
  onlyCorrects?: true;
}

export interface Phrase {
  id: string;
  /** Right-hand sides in JSGF notation; each must be said by one of the examples. */
  patterns: readonly string[];
  /** Sentences, each with what it states. */
  examples: Readonly<Record<string, readonly Statement[]>>;
  /** From the matched words to statements; undefined declines the match. */
  states(said: Said): Stated | undefined;
}

/** The items a pattern matched, with the questions phrases ask of them. */
export class Said {
  readonly words: string;

  constructor(readonly items: readonly Item[]) {
    this.words = ` ${items.map((item) => ("word" in item ? item.word : `<${item.slot}>`)).join(" ")} `;
  }

  /** The first value of a slot. */
  first<K extends SlotName>(slot: K): SlotValues[K] | undefined {
    return this.all(slot)[0];
  }

  /** Every value of a slot, in order. */
  all<K extends SlotName>(slot: K): SlotValues[K][] {
    return this.items.flatMap((item) =>
      "slot" in item && item.slot === slot ? [item.value as SlotValues[K]] : [],
    );
  }

  /** Whether one of these rows of words was said. */
  says(...phrases: readonly string[]): boolean {
    return phrases.some((phrase) => this.words.includes(` ${phrase} `));
  }

  /** A number, where "one" stays a plain word in a row because it is so often none. */
  number(): number | undefined {
    return this.first("number") ?? (this.says("one") ? 1 : undefined);
  }
}

/** One statement, sure. */
export const sure = (...statements: Statement[]): Stated => ({ statements });

/** A phrase that states the same whatever its words. */
export const fixedPhrase = (
  id: string,
  statement: Statement,
  patterns: readonly string[],
  examples: readonly string[],
): Phrase => ({
  id,
  patterns,
  examples: Object.fromEntries(examples.map((said) => [said, [statement]])),
  states: () => sure(statement),
});

/** Without the fields that are undefined, which a statement must not have. */
export function given<T extends object>(fields: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}

/**
 * A length, or a bare number taken for centimetres and put up for a look. Two bare numbers are
 * metres and centimetres ("depth one twenty"), or feet and inches where the second is below twelve.
 */
export function bareLength(
  said: Said,
): { mm: number; unit: LengthUnit; doubts: string[] } | undefined {
  const length = said.first("length");
  if (length) return { mm: length.mm, unit: length.unit, doubts: [] };
  const [first, second] = said.all("number");
  const doubts = ["a bare number"];
  if (first === undefined || first <= 0) return undefined;
  if (second !== undefined) {
    return second < 12
      ? { mm: first * 304.8 + second * 25.4, unit: "ft", doubts }
      : { mm: first * 1000 + second * 10, unit: "cm", doubts };
  }
  return first < METRES_BELOW && !Number.isInteger(first)
    ? { mm: first * 1000, unit: "m", doubts }
    : { mm: first * 10, unit: "cm", doubts };
}

/** "depth one point two" is metres. */
const METRES_BELOW = 5;
