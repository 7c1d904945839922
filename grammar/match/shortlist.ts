/**
 * Which patterns could match a row at all. A pattern is a row of parts; one that lacks any wording of
 * a part it can't do without is not worth trying, and that holds for nearly all of them.
 */

/** A part's wordings; one of them stands in every row that the pattern matches. */
export type Part = readonly (readonly string[])[];

interface Place {
  pattern: number;
  /** The part's own bit. */
  bit: number;
}

/** Further parts of a pattern are not looked at: a number has bits for so many. */
const MOST_PARTS = 30;

/**
 * @param needs the parts that each pattern can't do without
 * @returns the patterns, by their place in `needs`, that have all their parts somewhere in a row
 */
export function shortlistOf(needs: readonly (readonly Part[])[]) {
  const parts = needs.map((ofPattern) => ofPattern.slice(0, MOST_PARTS));
  const whole = parts.map((ofPattern) => 2 ** ofPattern.length - 1);
  const always = [...whole.keys()].filter((pattern) => whole[pattern] === 0);
  const places = placesOf(parts);
  const longest = Math.max(1, ...parts.flat(2).map((wording) => wording.length));

  return (row: readonly string[]): number[] => {
    const found = new Map<number, number>();
    for (let from = 0; from < row.length; from += 1) {
      let words = "";
      for (let to = from; to < row.length && to < from + longest; to += 1) {
        words = to === from ? (row[to] as string) : `${words} ${row[to]}`;
        for (const { pattern, bit } of places.get(words) ?? NOWHERE)
          found.set(pattern, (found.get(pattern) ?? 0) | bit);
      }
    }
    const all = [...always];
    for (const [pattern, bits] of found) if (bits === whole[pattern]) all.push(pattern);
    return all.sort((one, other) => one - other);
  };
}

const NOWHERE: readonly Place[] = [];

/** Where each wording stands. */
function placesOf(parts: readonly (readonly Part[])[]): ReadonlyMap<string, Place[]> {
  const places = new Map<string, Place[]>();
  for (const [pattern, ofPattern] of parts.entries()) {
    for (const [index, part] of ofPattern.entries()) {
      for (const wording of part) {
        const words = wording.join(" ");
        const here = places.get(words);
        const place = { pattern, bit: 2 ** index };
        if (here) here.push(place);
        else places.set(words, [place]);
      }
    }
  }
  return places;
}
