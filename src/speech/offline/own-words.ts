/** How the angler's own words are said: as he tells, else as the dictionary has them, else by letters. */
import { spell } from "./letters.ts";
import { type Names, type SpokenName, wordsOf } from "./places.ts";
import { type Dictionary, parseDictionary, pronounce } from "./pronounce.ts";

/**
 * The dictionary with every word of the names in it.
 * @param known how the grammar's words are said
 * @param readAll gives the text of the model's whole dictionary; asked only where it is needed
 */
export async function withOwnWords(
  known: Dictionary,
  names: Names,
  readAll: () => Promise<string>,
): Promise<Dictionary> {
  const all = Object.values(names).flat();
  if (all.every((name) => isKnown(name, known))) return known;
  const dictionary = new Map([...parseDictionary(await readAll()), ...known]);
  return new Map([...known, ...all.flatMap((name) => waysOf(name, dictionary))]);
}

const isKnown = ({ spoken, soundsLike }: SpokenName, known: Dictionary): boolean =>
  soundsLike === undefined && wordsOf(spoken).every((word) => known.has(word));

/** Each word of a name with its ways, the likeliest first. */
function waysOf({ spoken, soundsLike }: SpokenName, dictionary: Dictionary): [string, string[]][] {
  const words = wordsOf(spoken);
  const likes = likenesses(words, wordsOf(soundsLike ?? ""));
  return words.map((word, index) => {
    const like = likes[index] ?? [];
    const told = like.map((part) => pronounce(part, dictionary)[0] ?? spell(part)).join(" ");
    const ways = [told, ...pronounce(word, dictionary)].filter(Boolean);
    return [word, ways.length > 0 ? [...new Set(ways)] : [spell(word)].filter(Boolean)];
  });
}

/**
 * Which words of a "sounds like" stand for which word of the name: word by word where both have as
 * many, all for a name of one word; for other counts nobody can tell.
 */
function likenesses(words: readonly string[], like: readonly string[]): (readonly string[])[] {
  if (like.length === 0) return [];
  if (words.length === 1) return [like];
  return like.length === words.length ? like.map((part) => [part]) : [];
}
