/** A text in lines of at most `most` letters; a word that is longer is cut. */
export function wrap(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).flatMap((one) => cut(one, most))) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(word);
    }
  }
  return lines;
}

const cut = (word: string, most: number): string[] =>
  word.length <= most ? [word] : [word.slice(0, most), ...cut(word.slice(most), most)];
