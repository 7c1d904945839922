/** What is said to the ears when they are measured. */
import { readFileSync } from "node:fs";
import { heardGrammar } from "../../../grammar/fsg/heard-grammar.ts";
import { sample, seededRandom } from "../../../grammar/jsgf/sample.ts";
import type { Node } from "../../../grammar/jsgf/syntax.ts";
import { PHRASES } from "../../../grammar/phrases/index.ts";
import { createReader } from "../../../grammar/read.ts";
import { several } from "../../grammar/tables/paraphrases/several.ts";
import { paraphrases } from "../../grammar/tables/paraphrases.ts";

const reader = createReader();

/** Numerals and signs are how recognisers print a line, not how one is spoken. */
const isSpoken = (line: string): boolean => !/[\d£½¼¾:]/.test(line.replace(/f1/gi, ""));

/** Free text can't be heard by ears that are bound to phrases. */
const isFree = (line: string): boolean => /\bnote\b|\bto (feed|check|have)\b/i.test(line);

const isMeant = (line: string): boolean => reader.read([line]).verdict !== "ignore";

const usable = (line: string): boolean => isSpoken(line) && !isFree(line) && isMeant(line);

/** Drawn from the grammar that the ears are bound to: what they can hear at all. */
export function sampled(count: number, seed: number): string[] {
  const grammar = heardGrammar();
  const root = grammar.rules.get(grammar.publicRule) as Node;
  const random = seededRandom(seed);
  const drawn: string[] = [];
  while (drawn.length < count) {
    const sentence = sample(root, grammar, random) as string;
    if (usable(sentence)) drawn.push(sentence);
  }
  return drawn;
}

/** Drawn from the tables of what an angler says, whether the ears are bound to it or not. */
export const told = (count: number, seed: number): string[] => {
  const groups = new Set(several.flatMap(({ said }) => said));
  const single = paraphrases.flatMap(({ said }) => said).filter((line) => !groups.has(line));
  return drawFrom(single.filter(usable), count, seed);
};

/** Several statements in one breath, from the tables. */
export const inOneBreath = (count: number, seed: number): string[] =>
  drawFrom(several.flatMap(({ said }) => said).filter(usable), count, seed);

/** The examples of the phrases, which "What you can say" shows. */
export const examples = (count: number, seed: number): string[] =>
  drawFrom(PHRASES.flatMap((phrase) => Object.keys(phrase.examples)).filter(usable), count, seed);

/** Plain phrases that no setting of the ears was chosen by. */
export const plain = (count: number, seed: number): string[] =>
  drawFrom(linesOf(new URL("plain.txt", import.meta.url)).filter(usable), count, seed);

/** Ordinary talk on the bank, none of it for the log. */
export const talk = (count: number, seed: number): string[] =>
  drawFrom(
    ["chatter.txt", "bankside-chatter.txt"]
      .map((file) => new URL(`../../grammar/tables/${file}`, import.meta.url))
      .flatMap(linesOf)
      .filter(isSpoken),
    count,
    seed,
  );

const linesOf = (file: URL): string[] =>
  readFileSync(file, "utf8")
    .split("\n")
    .filter((line) => line && !line.startsWith("#"));

/** Without repeats; fewer than asked for where there are no more. */
function drawFrom(lines: readonly string[], count: number, seed: number): string[] {
  const random = seededRandom(seed);
  const rest = [...new Set(lines)];
  const drawn: string[] = [];
  while (drawn.length < count && rest.length > 0)
    drawn.push(...rest.splice(Math.floor(random() * rest.length), 1));
  return drawn;
}
