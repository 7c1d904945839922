/**
 * "it is", "the sun has" and "I am" in their short forms, so that patterns need only one of them.
 * Only after words that no pattern keeps apart from their verb.
 */
const SUBJECTS: ReadonlySet<string> = new Set(
  "it that there he she sun rain wind breeze mist fog".split(" "),
);

/** The short form of two neighbouring words, if they have one. */
export function contracted(word: string, next: string | undefined): string | undefined {
  if ((next === "is" || next === "has") && SUBJECTS.has(word)) return `${word}s`;
  if (next === "am" && word === "i") return "im";
  if (next === "have" && (word === "i" || word === "we")) return `${word}ve`;
  if (next === "are" && word === "we") return "were";
  if (next === "will" && word === "i") return "ill";
  return undefined;
}

/** A row of words with every pair that has a short form in it. */
export function contractWords(words: readonly string[]): string[] {
  const row: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const short = contracted(words[i] as string, words[i + 1]);
    row.push(short ?? (words[i] as string));
    if (short !== undefined) i += 1;
  }
  return row;
}
