/**
 * An utterance as the patterns see it: a row of items, each a plain word or a slot already read
 * (a weight, a species). The longest reading at each place wins.
 */

import { readCount, readOrdinal } from "../quantity/count.ts";
import { readDuration } from "../quantity/duration.ts";
import { readLength } from "../quantity/length.ts";
import { homophone, withoutNoise } from "../quantity/measure.ts";
import { readNumber } from "../quantity/number.ts";
import { readTemperature } from "../quantity/temperature.ts";
import { readWeight } from "../quantity/weight.ts";
import type { LengthUnit, WeightUnit } from "../statement.ts";
import { isFiller, isOpener } from "../text/fillers.ts";
import type { Token } from "../text/tokens.ts";
import { readBait } from "../vocabulary/bait-reading.ts";
import { nameAt, type Vocabulary } from "../vocabulary/vocabulary.ts";
import { readFreeText } from "./free-text.ts";

/** What each slot carries. */
export interface SlotValues {
  /** `ofFish`: said as "a two pounder", which is a fish by itself. */
  weight: { g: number; unit: WeightUnit; approx?: true; ofFish?: true };
  length: { mm: number; unit: LengthUnit; approx?: true };
  temperature: number;
  duration: number;
  number: number;
  /** "a brace", "half a dozen": a number that counts things. */
  count: number;
  ordinal: number;
  species: string;
  bait: { id: string; note?: string };
  "own-rig": string;
  text: string;
}

export type SlotName = keyof SlotValues;

export type Slot = { [K in SlotName]: { slot: K; value: SlotValues[K] } }[SlotName];

interface Place {
  /** Half-open range of tokens. */
  from: number;
  to: number;
}

export type Item = Place & ({ word: string } | Slot);

type Found = Slot & { next: number };
type SlotReader = (
  words: readonly string[],
  i: number,
  vocabulary: Vocabulary,
  heard: HeardWords,
) => Found | undefined;

/** The words of tokens `from` to before `to`, spaced as in the line. */
type HeardWords = (from: number, to: number) => string;

/** At equal length the earlier one wins. */
const READERS: readonly SlotReader[] = [
  (words, i, vocabulary) => {
    const rig = nameAt(vocabulary.rigs, words, i);
    return rig && { slot: "own-rig", value: rig.id, next: rig.next };
  },
  (words, i, vocabulary, heard) => {
    const bait = readBait(words, i, vocabulary);
    if (!bait) return undefined;
    const note = `${heard(bait.noteFrom, bait.noteTo)} ${bait.kind ?? ""}`.trim();
    return { slot: "bait", value: { id: bait.id, ...(note !== "" && { note }) }, next: bait.next };
  },
  (words, i, vocabulary) => {
    const species = nameAt(vocabulary.species, words, i);
    return species && { slot: "species", value: species.id, next: species.next };
  },
  (words, i) => {
    const weight = readWeight(words, i);
    if (!weight || weight.value <= 0) return undefined;
    const { value, unit, approx, next } = weight;
    const g = withoutNoise(value);
    const ofFish = /er$|ers$/.test(words[next - 1] ?? "") && ({ ofFish: true } as const);
    return { slot: "weight", value: { g, unit, ...(approx && { approx }), ...ofFish }, next };
  },
  (words, i) => {
    const length = readLength(words, i);
    if (!length || length.value <= 0) return undefined;
    const { value, unit, approx, next } = length;
    const mm = withoutNoise(value);
    return { slot: "length", value: { mm, unit, ...(approx && { approx }) }, next };
  },
  (words, i) => {
    const temperature = readTemperature(words, i);
    return temperature && { slot: "temperature", value: temperature.value, next: temperature.next };
  },
  (words, i) => {
    const duration = readDuration(words, i);
    return duration && { slot: "duration", value: duration.value, next: duration.next };
  },
  (words, i) => {
    const count = readCount(words, i);
    return count && { slot: "count", value: count.value, next: count.next };
  },
  (words, i) => {
    const ordinal = readOrdinal(words, i);
    return ordinal && { slot: "ordinal", value: ordinal.value, next: ordinal.next };
  },
  (words, i) => {
    const number = readNumber(words, i);
    if (number && !number.fraction && (words[i] !== "one" || number.next > i + 1)) {
      return { slot: "number", value: number.value, next: number.next };
    }
    return readMisprintedNumber(words, i);
  },
];

/** After these a "to" or "for" that leads nowhere else is a numeral misheard. */
const NUMBERED = new Set(["rig", "net", "number", "size", "hook", "peg"]);

const NOT_AFTER_NUMBER = new Set([
  "the",
  "a",
  "an",
  "my",
  "be",
  "it",
  "rig",
  "net",
  "this",
  "that",
  "its",
]);

function readMisprintedNumber(words: readonly string[], i: number): Found | undefined {
  const leadsOn = NOT_AFTER_NUMBER.has(words[i + 1] ?? "") || readNumber(words, i + 1);
  const value = NUMBERED.has(words[i - 1] ?? "") && !leadsOn ? homophone(words[i]) : undefined;
  return value === undefined ? undefined : { slot: "number", value, next: i + 1 };
}

/** The row of items for a line; words that carry nothing are left out. */
export function readItems(line: string, tokens: readonly Token[], vocabulary: Vocabulary): Item[] {
  const words = tokens.map((token) => token.word);
  /** "4mm" was printed without a space, so it is kept without one; "red red" is red. */
  const heard: HeardWords = (from, to) =>
    tokens.slice(from, to).reduce((text, { word, from: start }, k) => {
      if (k > 0 && tokens[from + k - 1]?.word === word) return text;
      const isJoined = k === 0 || tokens[from + k - 1]?.to === start;
      return text + (isJoined ? "" : " ") + word;
    }, "");

  const longest = (i: number): Found | undefined => {
    let best: Found | undefined;
    for (const read of READERS) {
      const found = read(words, i, vocabulary, heard);
      if (found && (!best || found.next > best.next)) best = found;
    }
    return best;
  };

  const slotAt = (i: number): Found | undefined => {
    const text = readFreeText(line, tokens, i);
    if (text) return { slot: "text", value: text.text, next: text.next };
    const isNumberOne = words[i] === "one" && longest(i + 1)?.slot === "number";
    return longest(i) ?? (isNumberOne ? { slot: "number", value: 1, next: i + 1 } : undefined);
  };

  const items: Item[] = [];
  for (let i = 0; i < words.length; ) {
    const found = slotAt(i);
    if (found) {
      const { next, ...slot } = found;
      items.push({ ...slot, from: i, to: next });
    } else if (!isEmpty(words, i, items.length === 0)) {
      items.push({ word: words[i] as string, from: i, to: i + 1 });
    }
    i = found?.next ?? i + 1;
  }
  return items;
}

/** "so" opens a line or joins two statements, but not in "so far" and "or so". */
function isEmpty(words: readonly string[], i: number, opens: boolean): boolean {
  const word = words[i] as string;
  const joins = word === "so" && words[i + 1] !== "far" && words[i - 1] !== "or";
  return isFiller(word) || joins || (opens && isOpener(word));
}

/** Items as the patterns see them: words, and slots by name. */
export const rowOf = (items: readonly Item[]): string[] =>
  items.map((item) => ("word" in item ? item.word : `<${item.slot}>`));
