/** Reads what was heard: the statements in it, the words left over, and a verdict. */
import { resolveCorrections } from "./corrections.ts";
import { joinPieces } from "./joining.ts";
import { parseRightHandSide } from "./jsgf/syntax.ts";
import { leftOver } from "./leftover.ts";
import { buildMatcher } from "./match/compromise.ts";
import { cover, type PatternEntry } from "./match/cover.ts";
import { type Item, readItems } from "./match/items.ts";
import { PHRASES } from "./phrases/index.ts";
import { RULES } from "./phrases/rules.ts";
import { repairs } from "./repair.ts";
import type { Statement } from "./statement.ts";
import { type Token, tokenise } from "./text/tokens.ts";
import { judge, type Verdict } from "./verdict.ts";
import { makeVocabulary, type OwnWords } from "./vocabulary/vocabulary.ts";

export interface Reading {
  /** The alternative that was read. */
  heard: string;
  verdict: Verdict;
  statements: Statement[];
  /** Why it was put up for a look; empty unless the verdict is "check". */
  doubts: string[];
  /** Words that no phrase took, in order. */
  leftover: string[];
  /** The phrases found, and which of their patterns. */
  phrases: { id: string; pattern: number }[];
}

export interface ReaderOptions {
  own?: OwnWords;
  /** Where set, only what starts with it counts. */
  callWord?: string;
}

export interface Reader {
  /** The best reading of up to five alternatives, best first. Never throws. */
  read(alternatives: readonly string[]): Reading;
}

export const MOST_ALTERNATIVES = 5;
/** No one says more in one breath; a longer line is talk or noise. */
const MOST_TOKENS = 80;

export function createReader({ own, callWord }: ReaderOptions = {}): Reader {
  const vocabulary = makeVocabulary(own);
  const inline = new Map(
    Object.entries(RULES).map(([name, source]) => [name, parseRightHandSide(source)]),
  );
  const patterns: PatternEntry[] = PHRASES.flatMap((phrase, rank) =>
    phrase.patterns.map((_, pattern) => ({ phrase, pattern, rank })),
  );
  const matcher = buildMatcher(
    patterns.map(({ phrase, pattern }, id) => ({
      id,
      tree: parseRightHandSide(phrase.patterns[pattern] as string),
    })),
    inline,
  );

  const readTokens = (heard: string, tokens: readonly Token[]): Reading => {
    const items = readItems(heard, tokens, vocabulary);
    const pieces = joinPieces(cover(items, matcher, patterns), items);
    const { statements, doubts, loose } = resolveCorrections(pieces);
    const taken = pieces.filter((piece) => !loose.includes(piece));
    const over = leftOver(items, taken);
    const judged = judge(statements, doubts, over);
    return {
      heard,
      ...judged,
      leftover: over.flatMap((item) => wordsOf(item, tokens)),
      phrases: taken.map(({ phrase, pattern }) => ({ id: phrase.id, pattern })),
    };
  };

  const readLine = (heard: string): Reading => {
    const tokens = afterCallWord(tokenise(heard), callWord);
    if (!tokens || tokens.length > MOST_TOKENS) return ignored(heard);
    const plain = readTokens(heard, tokens);
    if (plain.verdict === "log") return plain;
    for (const repaired of repairs(tokens, vocabulary)) {
      const reading = readTokens(heard, repaired);
      if (rank(reading) < rank(plain) && reading.leftover.length === 0) return reading;
    }
    return plain;
  };

  return {
    read(alternatives) {
      const readings = alternatives.slice(0, MOST_ALTERNATIVES).map(readLine);
      return readings.reduce(
        (best, reading) => (rank(reading) < rank(best) ? reading : best),
        readings[0] ?? ignored(""),
      );
    },
  };
}

const RANKS: Readonly<Record<Verdict, number>> = { log: 0, check: 1, ignore: 2 };

const rank = (reading: Reading): number => RANKS[reading.verdict];

const ignored = (heard: string): Reading => ({
  heard,
  verdict: "ignore",
  statements: [],
  doubts: [],
  leftover: [],
  phrases: [],
});

const wordsOf = (item: Item, tokens: readonly Token[]): string[] =>
  tokens.slice(item.from, item.to).map((token) => token.word);

/** What follows the call word; undefined where it is wanted and was not said. */
function afterCallWord(tokens: Token[], callWord: string | undefined): Token[] | undefined {
  if (callWord === undefined) return tokens;
  const words = tokenise(callWord).map((token) => token.word);
  const called = words.length > 0 && words.every((word, i) => tokens[i]?.word === word);
  return called ? tokens.slice(words.length) : undefined;
}
