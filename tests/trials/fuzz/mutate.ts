/** Damage of all sorts to a text, by even numbers from 0 to 1, so that a seed gives the same again. */
import { INJECTIONS } from "../../share/days.ts";

export type Random = () => number;

const pick = <T>(random: Random, of: readonly [T, ...T[]]): T =>
  of[Math.floor(random() * of.length)] ?? of[0];

const NUMBERS = [
  ...["0", "-1", "-0", "1e308", "1e999", "-1e308", "9007199254740993", "4102444800001"],
  ...["0.1", "NaN", "1e-320", "2147483648", "253402300800000"],
] as const;

const VALUES = [
  ...["null", "true", "[]", "{}", '""', "[[]]", '{"__proto__":{"polluted":1}}'],
  ...['"__proto__"', '{"constructor":{"prototype":{"polluted":1}}}', '"\\ud800"', '"\\u0000"'],
] as const;

type Change = (text: string, random: Random) => string;

const place = (text: string, random: Random) => Math.floor(random() * (text.length + 1));

/** Puts something else where a pattern fits, at one place of many. */
function swap(text: string, random: Random, pattern: RegExp, other: string): string {
  const found = [...text.matchAll(pattern)];
  const one = found[Math.floor(random() * found.length)];
  if (!one) return text;
  return text.slice(0, one.index) + other + text.slice(one.index + one[0].length);
}

const injection = (random: Random) => pick(random, INJECTIONS as readonly [string, ...string[]]);

const CHANGES: readonly [Change, ...Change[]] = [
  (text, random) => text.slice(0, place(text, random)),
  (text, random) => text.slice(place(text, random)),
  (text, random) => {
    const at = place(text, random);
    return text.slice(0, at) + injection(random) + text.slice(at);
  },
  (text, random) => {
    const [from, to] = [place(text, random), place(text, random)];
    return text.slice(0, from) + text.slice(to);
  },
  (text, random) => {
    const at = place(text, random);
    const letter = String.fromCharCode(Math.floor(random() * 300));
    return text.slice(0, at) + letter + text.slice(at + 1);
  },
  (text, random) => swap(text, random, /-?\d+(\.\d+)?/g, pick(random, NUMBERS)),
  (text, random) => swap(text, random, /-?\d+(\.\d+)?/g, pick(random, NUMBERS)),
  (text, random) => swap(text, random, /"(\\.|[^"\\])*"/g, JSON.stringify(injection(random))),
  (text, random) => swap(text, random, /"(\\.|[^"\\])*"/g, pick(random, VALUES)),
  (text, random) =>
    swap(text, random, /:("(\\.|[^"\\])*"|-?[\d.]+|\[\]|\{\})/g, `:${pick(random, VALUES)}`),
  (text, random) => swap(text, random, /[\r\n]+/g, pick(random, ["", "\n", ",\r\n", "\r"])),
  (text, random) => swap(text, random, /,/g, pick(random, ["", ",,", ";", ',"'])),
];

/** The text after one to three changes. */
export function mutate(text: string, random: Random): string {
  let changed = text;
  for (let left = 1 + Math.floor(random() * 3); left > 0; left -= 1) {
    changed = pick(random, CHANGES)(changed, random);
  }
  return changed;
}
