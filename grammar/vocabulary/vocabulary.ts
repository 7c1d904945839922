/**
 * Names that may be said for a species, a bait or one of the angler's own rigs. Built once for the
 * built-in words and again whenever the angler adds his own.
 */
import { plainWord } from "../jsgf/flatten.ts";
import { tokenise } from "../text/tokens.ts";
import { BAITS } from "./baits.ts";
import { SPECIES } from "./species.ts";

/** A name of the angler's own, and the ways he says it. */
export interface OwnWord {
  name: string;
  spoken: readonly string[];
  /** Known words it sounds like, for ears that can't tell from the letters. */
  soundsLike?: string | undefined;
}

export interface OwnWords {
  species?: readonly OwnWord[];
  baits?: readonly OwnWord[];
  rigs?: readonly OwnWord[];
}

export interface Name {
  id: string;
  next: number;
}

/** Names by their first word, longest first. */
export type NameList = ReadonlyMap<string, readonly { id: string; words: readonly string[] }[]>;

export interface Vocabulary {
  species: NameList;
  baits: NameList;
  /** The angler's own rigs; "rig two" and the usual rig names need no entry. */
  rigs: NameList;
  /** How a name of the angler's own is said. */
  spokenName(id: string): string | undefined;
  /** Whether a name of the angler's own begins with the word. */
  isOwn(word: string): boolean;
}

export function makeVocabulary(own: OwnWords = {}): Vocabulary {
  const ownSpecies = (own.species ?? []).map(asNames);
  const ownBaits = (own.baits ?? []).map(asNames);
  const ownRigs = (own.rigs ?? []).map(asNames);
  const everyOwn = [...ownSpecies, ...ownBaits, ...ownRigs];
  const spoken = new Map(everyOwn.map(({ id, names }) => [id, names[0]]));
  const firstWords = listNames(everyOwn);
  return {
    species: listNames([...SPECIES, ...ownSpecies]),
    baits: listNames([...BAITS, ...ownBaits]),
    rigs: listNames(ownRigs),
    spokenName: (id) => spoken.get(id),
    isOwn: (word) => firstWords.has(plainWord(word)),
  };
}

const asNames = ({ name, spoken }: OwnWord) => ({ id: name, names: [...spoken, name] });

function listNames(entries: readonly { id: string; names: readonly string[] }[]): NameList {
  const list = new Map<string, { id: string; words: readonly string[] }[]>();
  for (const { id, names } of entries) {
    for (const words of names.flatMap(withPlurals)) {
      const first = words[0];
      if (first === undefined) continue;
      const others = list.get(first);
      if (others) others.push({ id, words });
      else list.set(first, [{ id, words }]);
    }
  }
  for (const names of list.values()) names.sort((a, b) => b.words.length - a.words.length);
  return list;
}

function withPlurals(name: string): string[][] {
  const words = tokenise(name).map(({ word }) => plainWord(word));
  const last = words.at(-1) ?? "";
  const stem = words.slice(0, -1);
  return [words, [...stem, `${last}s`], [...stem, `${last}es`]];
}

/** The longest name of the list that starts at word `i`. */
export function nameAt(list: NameList, words: readonly string[], i: number): Name | undefined {
  const found = list
    .get(words[i] ?? "")
    ?.find((name) => name.words.every((word, k) => words[i + k] === word));
  return found && { id: found.id, next: i + found.words.length };
}
