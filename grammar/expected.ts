/** What a recogniser is told to expect. */
import { PHRASES } from "./phrases/index.ts";
import { BAITS } from "./vocabulary/baits.ts";
import { SPECIES } from "./vocabulary/species.ts";
import type { OwnWords } from "./vocabulary/vocabulary.ts";

/**
 * Words and phrases to expect, most telling first: the angler's own words, which no recogniser can
 * guess, the trade's names, and one sentence of each phrase.
 */
export function expectedPhrases({ species = [], baits = [], rigs = [] }: OwnWords = {}): string[] {
  const own = [...species, ...baits, ...rigs].flatMap(({ name, spoken }) => [name, ...spoken]);
  const names = [...SPECIES, ...BAITS].flatMap(({ names }) => names.slice(0, 2));
  const sentences = PHRASES.flatMap(({ examples }) => Object.keys(examples).slice(0, 1));
  return [...new Set([...own, ...names, ...sentences])];
}
