/** How a word is said: by a dictionary, or put together from words that stand in it. */

/** Ways of saying each word, the likeliest first. */
export type Dictionary = ReadonlyMap<string, readonly string[]>;

const LINE = /^(\S+?)(?:\(\d+\))? +(.+)$/;
/** Shorter parts are letters and endings that a longer word only seems to be made of. */
const SHORTEST_PART = 3;

/** Reads the model's own dictionary, a word and its phones on a line (a second way as "carp(2)"). */
export function parseDictionary(text: string): Dictionary {
  const ways = new Map<string, string[]>();
  for (const line of text.split("\n")) {
    const [, word, phones] = line.startsWith(";;") ? [] : (LINE.exec(line) ?? []);
    if (word === undefined || phones === undefined) continue;
    const known = ways.get(word);
    if (known) known.push(phones);
    else ways.set(word, [phones]);
  }
  return ways;
}

/** The ways of saying a word; none where it can't be told from known words. */
export function pronounce(word: string, dictionary: Dictionary): readonly string[] {
  const known = dictionary.get(word);
  return known ?? withEnding(word, dictionary) ?? compound(word, dictionary) ?? [];
}

/** "rig's" and "keepnets": the sound of the s goes by the sound before it. */
function withEnding(word: string, dictionary: Dictionary): readonly string[] | undefined {
  const stem = /^(.+?)'?s$/.exec(word)?.[1];
  const ways = stem ? pronounce(stem, dictionary) : [];
  return ways.length > 0 ? ways.map((way) => `${way} ${endingAfter(way)}`) : undefined;
}

function endingAfter(phones: string): string {
  const last = phones.split(" ").at(-1) ?? "";
  if (/^(S|Z|SH|ZH|CH|JH)$/.test(last)) return "IH Z";
  return /^(P|T|K|F|TH)$/.test(last) ? "S" : "Z";
}

/** "keepnet" is said as "keep" and "net"; the most even division of two known words wins. */
function compound(word: string, dictionary: Dictionary): readonly string[] | undefined {
  const middle = word.length / 2;
  const cuts = Array.from({ length: word.length + 1 }, (_, cut) => cut)
    .filter((cut) => cut >= SHORTEST_PART && word.length - cut >= SHORTEST_PART)
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  for (const cut of cuts) {
    const [first] = dictionary.get(word.slice(0, cut)) ?? [];
    const [second] = dictionary.get(word.slice(cut)) ?? [];
    if (first && second) return [`${first} ${second}`];
  }
  return undefined;
}
