/** A bait with what is said of its size and colour: "red six mil pellet", "double maggot". */
import { readNumber } from "../quantity/number.ts";
import { BAIT_CUTS, BAIT_QUALITIES, NAMED_KINDS } from "./baits.ts";
import { type Name, nameAt, type Vocabulary } from "./vocabulary.ts";

export interface BaitRead {
  id: string;
  /** Half-open range of the words that say its size and colour. */
  noteFrom: number;
  noteTo: number;
  /** The kind that the name carries with it ("micros"). */
  kind?: string;
  next: number;
}

const MIL = new Set(["mil", "mils", "mill", "mills", "mm", "ml", "millimetre", "millimetres"]);
const MOST_QUALITIES = 4;

/** The bait that starts at word `i`, its qualities first. */
export function readBait(
  words: readonly string[],
  i: number,
  vocabulary: Vocabulary,
): BaitRead | undefined {
  const noteFrom = BAIT_CUTS.has(words[i] ?? "") ? i + 1 : i;
  let at = noteFrom;
  let sized = false;
  for (let taken = 0; taken < MOST_QUALITIES; taken += 1) {
    const bait = nameAt(vocabulary.baits, words, at);
    if (bait) return { ...withKind(words, at, bait), noteFrom, noteTo: at };
    const next = readQuality(words, at);
    if (next === undefined) break;
    sized ||= next > at + 1;
    at = next;
  }
  const isPellet = sized && (words[i] === "banded" || isHookedOrFed(words, i));
  return isPellet ? { id: "pellet", noteFrom, noteTo: at, next: at } : undefined;
}

/** "on the red six mil", "pinging six mils": only pellets are called by their size alone. */
const isHookedOrFed = (words: readonly string[], i: number): boolean =>
  /^(on|onto|to|some|pinging|pinged|ping|fed|feeding|feed|potted|potting|catapulting|catapulted)$/.test(
    words[/^(the|a|an)$/.test(words[i - 1] ?? "") ? i - 2 : i - 1] ?? "",
  );

function withKind(words: readonly string[], nameFrom: number, { id, next }: Name) {
  const kind = NAMED_KINDS.get(words[nameFrom] ?? "");
  return kind === undefined ? { id, next } : { id, kind, next };
}

/** A colour or kind word, or a size in millimetres. */
function readQuality(words: readonly string[], i: number): number | undefined {
  if (BAIT_QUALITIES.has(words[i] ?? "") || BAIT_CUTS.has(words[i] ?? "")) return i + 1;
  const size = readNumber(words, i);
  return size && MIL.has(words[size.next] ?? "") ? size.next + 1 : undefined;
}
