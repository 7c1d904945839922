/**
 * What of a text is new. Browsers repeat finals, and send texts that hold all that went before
 * once more; an utterance must come out once.
 */

/** Bare words, so that a capital letter or a full stop added later makes no difference. */
function bareWords(text: string): string[] {
  return text
    .split(/\s+/)
    .map((word) => word.toLowerCase().replace(/^\p{P}+|\p{P}+$/gu, ""))
    .filter(Boolean);
}

/**
 * What `text` adds to `taken`: empty when it repeats it whole or in part, the further words when
 * it goes on from it, undefined when it is something else.
 */
export function remainder(text: string, taken: string): string | undefined {
  const words = bareWords(text);
  const before = bareWords(taken);
  const common = Math.min(words.length, before.length);
  if (words.slice(0, common).some((word, index) => word !== before[index])) return undefined;
  const spoken = text.split(/\s+/).filter((word) => bareWords(word).length > 0);
  return spoken.slice(common).join(" ");
}

/** Joins the pieces of one utterance, where a piece may hold those before it once more. */
export function joinCumulative(pieces: readonly string[]): string {
  return pieces.reduce((whole, piece) => `${whole} ${remainder(piece, whole) ?? piece}`.trim(), "");
}
