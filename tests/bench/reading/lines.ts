/** Lines to read, and how well they are read. */
import { readFileSync } from "node:fs";
import { wholeGrammar } from "../../../grammar/grammar.ts";
import { sample, seededRandom } from "../../../grammar/jsgf/sample.ts";
import type { Node } from "../../../grammar/jsgf/syntax.ts";
import type { Reader } from "../../../grammar/read.ts";
import type { Statement } from "../../../grammar/statement.ts";
import { isAlike } from "../../grammar/alike.ts";
import { misprints } from "../../grammar/tables/misprints.ts";
import { paraphrases } from "../../grammar/tables/paraphrases.ts";
import { type Noise, noisy } from "./noise.ts";

export interface Said {
  line: string;
  means: readonly Statement[];
}

/** Phrases drawn from the grammar that are logged as they stand: what they mean is taken from there. */
export function sampledPhrases(reader: Reader, count: number, seed: number): Said[] {
  const grammar = wholeGrammar();
  const root = grammar.rules.get(grammar.publicRule) as Node;
  const random = seededRandom(seed);
  const drawn: Said[] = [];
  while (drawn.length < count) {
    const line = sample(root, grammar, random) as string;
    const { verdict, statements } = reader.read([line]);
    if (verdict === "log") drawn.push({ line, means: statements });
  }
  return drawn;
}

export const made = (said: readonly Said[], noise: Noise, seed: number): Said[] => {
  const random = seededRandom(seed);
  return said.map(({ line, means }) => ({ line: noisy(line, noise, random), means }));
};

export interface Outcome {
  lines: number;
  /** Read as meant, sure or for a look. */
  right: number;
  /** Logged without a doubt as something else. */
  wrong: number;
  /** Put up for a look as something else. */
  doubted: number;
  /** Passed over. */
  ignored: number;
}

export function outcomeOf(reader: Reader, said: readonly Said[]): Outcome {
  const outcome: Outcome = { lines: said.length, right: 0, wrong: 0, doubted: 0, ignored: 0 };
  for (const { line, means } of said) {
    const { verdict, statements } = reader.read([line]);
    if (isAlike(means, statements)) outcome.right += 1;
    else if (verdict === "log") outcome.wrong += 1;
    else if (verdict === "check") outcome.doubted += 1;
    else outcome.ignored += 1;
  }
  return outcome;
}

const linesOf = (file: string): string[] =>
  readFileSync(new URL(`../../grammar/tables/${file}`, import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "" && !line.startsWith("#"));

/** The tables that the reader is held to, by name. */
export function tables(reader: Reader): Record<string, Said[]> {
  return {
    paraphrases: paraphrases.flatMap(({ means, said }) => said.map((line) => ({ line, means }))),
    misprints: misprints.map(([line, meant]) => ({
      line,
      means: reader.read([meant]).statements,
    })),
    "lines from the bank": linesOf("bankside.jsonl").map((row) => {
      const { said, means } = JSON.parse(row) as { said: string; means: Statement[] };
      return { line: said, means };
    }),
    talk: ["chatter.txt", "bankside-chatter.txt"]
      .flatMap(linesOf)
      .map((line) => ({ line, means: [] })),
  };
}
