/**
 * How a word is likely said, from its letters alone: for names that no dictionary holds. Written by
 * ear, without source; wrong for one word in several, so "sounds like" in Set-up comes first.
 */

/** Letters that are said together, and how; of those that fit at a place, the longest is taken. */
const SOUNDS = table(`
  a AE, ai EY, ay EY, ar AA R, are EH R, air EH R, au AO, aw AO, al AE L, all AO L, augh AO,
  e EH, ea IY, ear IH R, ee IY, eer IH R, ei EY, er ER, ere IH R, eu UW, ew Y UW, ey IY,
  i IH, ie IY, igh AY, ing IH NG, ir ER, o AA, oa OW, oe OW, oi OY, oo UW, ook UH K, or AO R,
  ore AO R, ou AW, ough OW, ow OW, oy OY, u AH, ue UW, ur ER, y Y,
  b B, bb B, c K, cc K, ch CH, ck K, d D, dd D, dge JH, f F, ff F, g G, gg G, gh G, h HH, j JH, k K,
  kn N, l L, ll L, m M, mb M, mm M, n N, ng NG, nk NG K, nn N, p P, ph F, pp P, q K, qu K W, r R,
  rh R, rr R, s S, sch S K, sh SH, ss S, t T, tch CH, th TH, tion SH AH N, tt T, v V, w W, wh W,
  wr R, x K S, z Z, zz Z`);
/** At the end of a word. */
const ENDINGS = table(`
  a AH, ange EY N JH, ce S, e , ed D, er ER, es Z, ge JH, i IY, ies IY Z, ive IH V, le AH L,
  nge N JH, o OW, y IY`);
/** A vowel before one consonant and a last e. */
const LONG: Readonly<Record<string, string>> = { a: "EY", e: "IY", i: "AY", o: "OW", u: "UW" };
const LONGEST = 4;

/** @param word letters; others are passed over. @returns phones, a space between */
export function spell(word: string): string {
  const letters = word.toLowerCase().replace(/[^a-z]/g, "");
  const phones: string[] = [];
  for (let at = 0; at < letters.length; ) {
    const [length, sound] = next(letters, at);
    if (sound !== "") phones.push(sound);
    at += length;
  }
  return phones.join(" ");
}

function next(letters: string, at: number): [length: number, sound: string] {
  const rest = letters.slice(at);
  const long = LONG[rest[0] as string];
  if (long && /^.[bcdfgklmnptvz]e(s|d)?$/.test(rest)) return [1, long];
  const ending = at > 1 ? ENDINGS.get(rest) : undefined;
  if (ending !== undefined) return [rest.length, ending];
  if (rest.startsWith("y") && at > 0) return [1, "IH"];
  if (/^c[eiy]/.test(rest)) return [1, "S"];
  for (let length = LONGEST; length > 0; length -= 1) {
    const sound = SOUNDS.get(rest.slice(0, length));
    if (sound !== undefined && rest.length >= length) return [length, sound];
  }
  return [1, ""];
}

/** Letters, then phones, in each entry. */
function table(text: string): ReadonlyMap<string, string> {
  const entries = text.split(",").map((entry) => entry.trim());
  return new Map(
    entries.map((entry) => {
      const [letters = "", ...phones] = entry.split(" ");
      return [letters, phones.join(" ")];
    }),
  );
}
