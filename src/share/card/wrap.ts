/** How wide a text is, in whatever unit. */
export type Measure = (text: string) => number;

/** A text in lines no wider than `most`; a word that is wider is cut. */
export function wrap(text: string, most: number, width: Measure): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).flatMap((one) => cut(one, most, width))) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && width(longer) <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function cut(word: string, most: number, width: Measure): string[] {
  if (width(word) <= most) return [word];
  const letters = [...word];
  const rest = letters.findIndex((_, place) => width(letters.slice(0, place + 1).join("")) > most);
  const fits = Math.max(1, rest);
  return [letters.slice(0, fits).join(""), ...cut(letters.slice(fits).join(""), most, width)];
}
