/** Plain quantities in the forms in which they are said and printed, each with its value. */
import type { Random } from "../../../grammar/jsgf/sample.ts";

export interface Quantity {
  text: string;
  /** Grams or millimetres. */
  value: number;
}

export interface Form {
  name: string;
  /** Said before it, it makes the quantity a phrase. */
  before: "carp" | "depth";
  /** The units in it, largest first, in grams or millimetres: told to a reader that knows none. */
  units: readonly number[];
  draw(random: Random): Quantity;
}

/** International yard and pound agreement of 1959, exact. */
const LB = 453.59237;
const OZ = LB / 16;
const INCH = 25.4;
const FOOT = 12 * INCH;

const SMALL =
  "nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** A whole number below 1,000, as it is said in Britain. */
export function said(n: number): string {
  if (n < 20) return SMALL[n] as string;
  if (n >= 100)
    return `${SMALL[Math.floor(n / 100)]} hundred${n % 100 ? ` and ${said(n % 100)}` : ""}`;
  return `${TENS[Math.floor(n / 10) - 2]}${n % 10 ? ` ${SMALL[n % 10]}` : ""}`;
}

/** Even from `from` to `to`, both among them. */
const whole = (random: Random, from: number, to: number) =>
  from + Math.floor(random() * (to - from + 1));

const PARTS = [
  ["a quarter", 0.25, "¼"],
  ["a half", 0.5, "½"],
  ["three quarters", 0.75, "¾"],
] as const;

const part = (random: Random) => PARTS[whole(random, 0, 2)] as (typeof PARTS)[number];

const weight = (name: string, units: readonly number[], draw: Form["draw"]): Form => ({
  ...{ name, before: "carp", units, draw },
});

const length = (name: string, units: readonly number[], draw: Form["draw"]): Form => ({
  ...{ name, before: "depth", units, draw },
});

export const FORMS: readonly Form[] = [
  weight("two pounds", [LB], (random) => {
    const n = whole(random, 2, 40);
    return { text: `${said(n)} pounds`, value: n * LB };
  }),
  weight("two and a half pounds", [LB], (random) => {
    const [n, [words, share]] = [whole(random, 2, 20), part(random)];
    return { text: `${said(n)} and ${words} pounds`, value: (n + share) * LB };
  }),
  weight("half a pound", [LB], (random) => {
    const [words, share] = part(random);
    const text = share === 0.5 ? "half a pound" : `${words} of a pound`;
    return { text, value: share * LB };
  }),
  weight("a pound and a half", [LB], (random) => {
    const [words, share] = part(random);
    return { text: `a pound and ${words}`, value: (1 + share) * LB };
  }),
  weight("two pounds eight ounces", [LB, OZ], (random) => {
    const [n, oz] = [whole(random, 2, 30), whole(random, 2, 15)];
    return { text: `${said(n)} pounds ${said(oz)} ounces`, value: n * LB + oz * OZ };
  }),
  weight("two pound eight", [LB, OZ], (random) => {
    const [n, oz] = [whole(random, 2, 30), whole(random, 1, 15)];
    return { text: `${said(n)} pound ${said(oz)}`, value: n * LB + oz * OZ };
  }),
  weight("a two pounder", [LB], (random) => {
    const n = whole(random, 2, 30);
    return { text: `a ${said(n)} pounder`, value: n * LB };
  }),
  weight("fourteen ounces", [OZ], (random) => {
    const n = whole(random, 2, 30);
    return { text: `${said(n)} ounces`, value: n * OZ };
  }),
  weight("one point two kilos", [1000], (random) => {
    const [n, tenth] = [whole(random, 1, 9), whole(random, 1, 9)];
    return { text: `${said(n)} point ${said(tenth)} kilos`, value: 1000 * n + 100 * tenth };
  }),
  weight("eight hundred grams", [1], (random) => {
    const n = 10 * whole(random, 3, 99);
    return { text: `${said(n)} grams`, value: n };
  }),
  weight("2 lb 8 oz", [LB, OZ], (random) => {
    const [n, oz] = [whole(random, 2, 30), whole(random, 1, 15)];
    return { text: `${n} lb ${oz} oz`, value: n * LB + oz * OZ };
  }),
  weight("2½ lb", [LB], (random) => {
    const [n, [, share, sign]] = [whole(random, 2, 30), part(random)];
    return { text: `${n}${sign} lb`, value: (n + share) * LB };
  }),
  weight("2.5 kg", [1000], (random) => {
    const n = whole(random, 11, 90);
    return { text: `${n / 10} kg`, value: 100 * n };
  }),
  length("forty five centimetres", [10], (random) => {
    const n = whole(random, 20, 99);
    return { text: `${said(n)} centimetres`, value: 10 * n };
  }),
  length("half a metre", [1000], (random) => {
    const [words, share] = part(random);
    const text = share === 0.5 ? "half a metre" : `${words} of a metre`;
    return { text, value: 1000 * share };
  }),
  length("a metre twenty", [1000, 10], (random) => {
    const n = whole(random, 10, 99);
    return { text: `a metre ${said(n)}`, value: 1000 + 10 * n };
  }),
  length("one metre twenty centimetres", [1000, 10], (random) => {
    const [n, cm] = [whole(random, 2, 9), whole(random, 10, 95)];
    return { text: `${said(n)} metres ${said(cm)} centimetres`, value: 1000 * n + 10 * cm };
  }),
  length("four foot six", [FOOT, INCH], (random) => {
    const [n, inches] = [whole(random, 2, 9), whole(random, 1, 11)];
    return { text: `${said(n)} foot ${said(inches)}`, value: n * FOOT + inches * INCH };
  }),
  length("sixteen and a quarter inches", [INCH], (random) => {
    const [n, [words, share]] = [whole(random, 6, 40), part(random)];
    return { text: `${said(n)} and ${words} inches`, value: (n + share) * INCH };
  }),
  length("1.2 m", [1000], (random) => {
    const n = whole(random, 5, 60);
    return { text: `${n / 10} m`, value: 100 * n };
  }),
];
