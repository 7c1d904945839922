/**
 * Numbers as anglers say them and recognisers print them: "twenty-two", "a hundred and five", "two
 * and three quarters", "one point two", "half", "2", "2.5", "1/2", "2 1/2".
 */

export interface NumberRead {
  value: number;
  /** Index of the first word after it. */
  next: number;
  /** A bare fraction ("half", "three quarters"), which wants a unit: "half a pound". */
  fraction?: true;
}

const UNITS =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen";
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety";

export const SMALL_NUMBERS: ReadonlyMap<string, number> = new Map([
  ...UNITS.split(" ").map((word, value): [string, number] => [word, value]),
  ["nought", 0],
  ["nil", 0],
  ["fourty", 40],
]);

export const TENS_NUMBERS: ReadonlyMap<string, number> = new Map([
  ...TENS.split(" ").map((word, index): [string, number] => [word, 20 + 10 * index]),
  ["fourty", 40],
]);

const FRACTIONS: ReadonlyMap<string, number> = new Map([
  ["half", 1 / 2],
  ["halves", 1 / 2],
  ["quarter", 1 / 4],
  ["quarters", 1 / 4],
]);

const NUMERAL = /^(\d+(\.\d+)?|\.\d+)$/;
const PRINTED_FRACTION = /^(\d+)\/(\d+)$/;
const MAX_DIGITS = 9;

/** The number that starts at word `i`, as long as it goes; undefined where none starts. */
export function readNumber(words: readonly string[], i: number): NumberRead | undefined {
  const fraction = readFraction(words, i);
  if (fraction) return { ...fraction, fraction: true };
  const whole = readPointed(words, i) ?? readNumeral(words, i) ?? readCardinal(words, i);
  return whole && withFraction(words, whole);
}

/** "half", "a half", "three quarters", "1/2". */
function readFraction(words: readonly string[], i: number): NumberRead | undefined {
  const printed = PRINTED_FRACTION.exec(words[i] ?? "");
  if (printed) return printedFraction(printed, i);
  const start = words[i] === "a" || words[i] === "one" ? i + 1 : i;
  const parts = FRACTIONS.get(words[start] ?? "");
  if (parts !== undefined) return { value: parts, next: start + 1 };
  const top = SMALL_NUMBERS.get(words[i] ?? "") ?? digits(words[i]);
  const bottom = FRACTIONS.get(words[i + 1] ?? "");
  if (top === undefined || top < 2 || bottom === undefined || !words[i + 1]?.endsWith("s")) {
    return words[i + 1] === "quarter" && top === 3 ? { value: 3 / 4, next: i + 2 } : undefined;
  }
  return { value: top * bottom, next: i + 2 };
}

function printedFraction(match: RegExpExecArray, i: number): NumberRead | undefined {
  const [, top, bottom] = match;
  const value = Number(top) / Number(bottom);
  return Number.isFinite(value) && value < 1 ? { value, next: i + 1 } : undefined;
}

/** "point five", "nought point five", "two point two five", "one point twenty-five". */
function readPointed(words: readonly string[], i: number): NumberRead | undefined {
  const whole = words[i] === "point" ? { value: 0, next: i } : readWhole(words, i);
  if (!whole || words[whole.next] !== "point") return undefined;
  let decimals = "";
  let next = whole.next + 1;
  for (let part = readDecimals(words, next); part; part = readDecimals(words, next)) {
    if (decimals.length + part.text.length > MAX_DIGITS) break;
    decimals += part.text;
    next = part.next;
  }
  return decimals === "" ? undefined : { value: Number(`${whole.value}.${decimals}`), next };
}

const readWhole = (words: readonly string[], i: number) =>
  readNumeral(words, i) ?? readCardinal(words, i);

/** What may follow "point": spoken digits, tens and ones, or a printed run. */
function readDecimals(words: readonly string[], i: number) {
  const word = words[i];
  if (word === undefined) return undefined;
  if (word === "oh") return { text: "0", next: i + 1 };
  if (/^\d{1,3}$/.test(word)) return { text: word, next: i + 1 };
  const spoken = readBelowHundred(words, i);
  return spoken && { text: String(spoken.value), next: spoken.next };
}

const digits = (word: string | undefined): number | undefined =>
  word !== undefined && NUMERAL.test(word) && word.length <= MAX_DIGITS ? Number(word) : undefined;

function readNumeral(words: readonly string[], i: number): NumberRead | undefined {
  const value = digits(words[i]);
  return value === undefined ? undefined : { value, next: i + 1 };
}

/** Cardinals in words up to 9,999: hundreds and thousands, with or without "and". */
function readCardinal(words: readonly string[], i: number): NumberRead | undefined {
  const thousands = readScaled(words, i, "thousand", 1000, readBelowHundred);
  const hundreds = readScaled(words, thousands?.next ?? i, "hundred", 100, readBelowHundred);
  const head = (thousands?.value ?? 0) + (hundreds?.value ?? 0);
  const after = hundreds?.next ?? thousands?.next;
  if (after === undefined) return readBelowHundred(words, i);
  const tail = readBelowHundred(words, words[after] === "and" ? after + 1 : after);
  return tail ? { value: head + tail.value, next: tail.next } : { value: head, next: after };
}

type Reader = (words: readonly string[], i: number) => NumberRead | undefined;

/** "two hundred", "a hundred", "hundred". */
function readScaled(
  words: readonly string[],
  i: number,
  scale: string,
  size: number,
  read: Reader,
): NumberRead | undefined {
  const times = words[i] === "a" ? { value: 1, next: i + 1 } : read(words, i);
  const { value, next } = times ?? { value: 1, next: i };
  return words[next] === scale ? { value: value * size, next: next + 1 } : undefined;
}

function readBelowHundred(words: readonly string[], i: number): NumberRead | undefined {
  const word = words[i] ?? "";
  const tens = TENS_NUMBERS.get(word);
  if (tens === undefined) {
    const small = SMALL_NUMBERS.get(word);
    return small === undefined ? undefined : { value: small, next: i + 1 };
  }
  const ones = SMALL_NUMBERS.get(words[i + 1] ?? "") ?? 0;
  return ones > 0 && ones < 10 ? { value: tens + ones, next: i + 2 } : { value: tens, next: i + 1 };
}

/** "two and a half", "two and three quarters", "2 1/2"; "two half" is not a number. */
function withFraction(words: readonly string[], whole: NumberRead): NumberRead {
  const joined = words[whole.next] === "and" ? whole.next + 1 : whole.next;
  const printed = PRINTED_FRACTION.test(words[joined] ?? "");
  if (joined === whole.next && !printed) return whole;
  const fraction = readFraction(words, joined);
  return fraction && Number.isInteger(whole.value)
    ? { value: whole.value + fraction.value, next: fraction.next }
    : whole;
}
