/**
 * From a heard line to plain tokens: lower case, one word or one numeral each, with the place in the
 * line it came from. Recognisers print the same speech in many ways ("2lb8", "£2", "2½ lb", "F-1",
 * "1:30"); after this only one is left.
 */
import { contracted } from "./contraction.ts";
import { isMine, usualWords } from "./dialect.ts";

export interface Token {
  word: string;
  /** Half-open range of characters in the line as heard. */
  from: number;
  to: number;
}

/** Longer than any utterance; what is beyond is not read, so that a pasted book costs nothing. */
export const MAX_LINE_LENGTH = 10_000;

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/**
 * One piece of a line, by alternatives in order: a sum of money (which is a weight misheard), a
 * fraction, a clock-like pair, a decimal or grouped numeral, an ordinal numeral, F1 however it is
 * spelt, a word with its apostrophes, a word starred out, or a sign that stands for a unit.
 */
const PIECE =
  /£\s?\d+(?:\.\d+)?[¼½¾]?|[¼½¾⅓⅔⅛⅜⅝⅞]|\d+\/\d+|\d{1,2}:\d{2}(?!\d)|\d{1,3}(?:,\d{3})+|\d*\.\d+|\d+(?:st|nd|rd|th)(?![\p{L}\p{N}])|f[\s-]?(?:1|one)(?:['’]?s)?(?![\p{L}\p{N}./:])|\d+|\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)*\*+\p{L}*|\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)*|\*+|['’′](?!\p{L})|["”″]|°\s?[cf](?!\p{L})|°|&|\+|(?<![\p{L}\p{N}.])[-−](?=\d)/giu;

const SWEARING = "***";

export function tokenise(line: string): Token[] {
  const tokens: Token[] = [];
  for (const match of line.slice(0, MAX_LINE_LENGTH).matchAll(PIECE)) {
    const from = match.index;
    const to = from + match[0].length;
    for (const word of spell(match[0].toLowerCase(), tokens.at(-1), from).flatMap(usualWords)) {
      push(tokens, { word, from, to });
    }
  }
  return tokens;
}

/** Appends a token, or joins it to the one before where both have a short form. */
function push(tokens: Token[], token: Token): void {
  const before = tokens.at(-1);
  if (before && isMine(before.word, token.word)) before.word = "my";
  const short = before && contracted(before.word, token.word);
  if (before && short !== undefined) {
    tokens[tokens.length - 1] = { word: short, from: before.from, to: token.to };
  } else {
    tokens.push(token);
  }
}

const isNumeral = (token: Token | undefined, from: number): boolean =>
  token !== undefined && token.to === from && /^[\d./]+$/.test(token.word);

/** "rig four's going on". */
const OWNED_NUMBER = /^(two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+)['’]s$/;

/** Sounds of hesitation, which may stand even inside a quantity. */
const HESITATION = /^(u+m+|e+r+m*|u+h+|a+h+|h+m+|m+)$/;

/** The plain words for one piece; a foot or inch sign counts only straight after a numeral. */
function spell(piece: string, before: Token | undefined, from: number): string[] {
  if (HESITATION.test(piece) && piece !== "m" && piece !== "mm") return [];
  const first = piece.charAt(0);
  if (first === "£") return spellMoney(piece.slice(1).trim());
  if (/^\d{1,2}:\d{2}$/.test(piece)) return piece.split(":").map((part) => String(Number(part)));
  if (/^\d{1,3}(,\d{3})+$/.test(piece)) return [piece.replaceAll(",", "")];
  if (first in VULGAR_FRACTIONS) return [VULGAR_FRACTIONS[first] as string];
  if (/^f[\s-]?(1|one)(['’]?s)?$/.test(piece)) return ["f1"];
  if (piece.includes("*")) return [SWEARING];
  if (/^['’′]$/.test(piece)) return isNumeral(before, from) ? ["feet"] : [];
  if (/^["”″]$/.test(piece)) return isNumeral(before, from) ? ["inches"] : [];
  if (first === "°") return piece.length > 1 ? ["degrees", piece.at(-1) as string] : ["degrees"];
  if (piece === "&" || piece === "+") return ["and"];
  if (piece === "-" || piece === "−") return ["minus"];
  return [piece.replace(OWNED_NUMBER, "$1").replace(/['’]/g, "")];
}

/** "two pound eight" is printed "£2.08" or "£2 8"; pence below sixteen are the ounces. */
function spellMoney(amount: string): string[] {
  const fraction = VULGAR_FRACTIONS[amount.at(-1) ?? ""];
  if (fraction !== undefined) return [amount.slice(0, -1), fraction, "pounds"];
  const [pounds = "", pence] = amount.split(".");
  if (pence === undefined) return [pounds, "pounds"];
  return /^0\d$|^1[0-5]$/.test(pence)
    ? [pounds, "pounds", String(Number(pence)), "ounces"]
    : [`${pounds}.${pence}`, "pounds"];
}
