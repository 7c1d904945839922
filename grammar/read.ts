/** Reads what was heard: the statements in it, the words left over, and a verdict. */
import { resolveCorrections } from "./corrections.ts";
import { joinPieces } from "./joining.ts";
import { Language } from "./language.ts";
import { isExcused, leftOver } from "./leftover.ts";
import { signsOfLostWords } from "./lost-words.ts";
import { cover } from "./match/cover.ts";
import { type Item, readItems } from "./match/items.ts";
import { type Find, remembering } from "./match/remembering.ts";
import { isQuantityWord } from "./quantity/words.ts";
import { isBorneOut, isSuspect, mostBelief, repairs } from "./repair.ts";
import type { Statement } from "./statement.ts";
import { undoubled } from "./text/doubled.ts";
import { type Token, tokenise } from "./text/tokens.ts";
import { isOfOthers, isStrange, judge, MOST_STRANGE_WORDS, type Verdict } from "./verdict.ts";
import { makeVocabulary, type OwnWords, type Vocabulary } from "./vocabulary/vocabulary.ts";

export interface Reading {
  /** The alternative that was read. */
  heard: string;
  verdict: Verdict;
  statements: Statement[];
  /** What it would state if it were no talk; more than `statements` only where it is ignored. */
  possible: Statement[];
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
/** In a line this short any word may be a misprint, also one that fits a phrase. */
const FEW_TOKENS = 5;
/** Words left over beside the misprints: more of them mean that the line is talk. */
const MOST_SOUND = 4;
/** No one says more in one breath; a longer line is talk or noise. */
const MOST_TOKENS = 80;

/** What is read where the angler's own names make no sense of a line. */
const BUILT_IN = makeVocabulary();

/** @param language shared by readers that know other names, so that each need not make its own */
export function createReader(
  { own, callWord }: ReaderOptions = {},
  language = new Language(),
): Reader {
  const vocabulary = makeVocabulary(own);
  const readOwn = lineReader(vocabulary, callWord, language);
  const readPlain = lineReader(BUILT_IN, callWord, language);
  const readLine = (heard: string): Reading => {
    const reading = readOwn(heard);
    const isOwnSaid = tokenise(heard).some(({ word }) => vocabulary.isOwn(word));
    return isOwnSaid ? withOwn(reading, readPlain(heard)) : reading;
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

/**
 * A name of the angler's own never makes deaf: "carp two pounds" is a fish though a rig is called
 * "Carp", and "undo" takes back whatever somebody's plan calls by it.
 */
function withOwn(own: Reading, plain: Reading): Reading {
  if (rank(plain) < rank(own)) return plain;
  return isCommand(plain) && !isCommand(own) ? plain : own;
}

const COMMANDS: ReadonlySet<string> = new Set<Statement["kind"]>([
  ...(["amend", "withdraw", "ask", "session", "remind", "talkback"] as const),
]);

const isCommand = ({ verdict, statements }: Reading): boolean =>
  verdict === "log" && statements.every(({ kind }) => COMMANDS.has(kind));

/** Reads one line as it was printed, by these names. */
function lineReader(
  vocabulary: Vocabulary,
  callWord: string | undefined,
  { matcher, patterns }: Language,
): (heard: string) => Reading {
  const readTokens = (heard: string, tokens: readonly Token[], find: Find): Attempt => {
    const items = readItems(heard, tokens, vocabulary);
    const pieces = cover(items, find, patterns);
    const isEnd = isSentenceEnd(heard, tokens);
    const attempt = (mayJoin: (gap: readonly Item[]) => boolean): Attempt => {
      const joined = joinPieces(pieces, items, isEnd, mayJoin);
      const { statements, doubts, loose } = resolveCorrections(joined);
      const taken = joined.filter((piece) => !loose.includes(piece));
      doubts.push(...signsOfLostWords(taken, items, tokens));
      const over = leftOver(items, taken);
      const reading = {
        heard,
        ...judge(statements, doubts, over),
        possible: statements,
        leftover: over.flatMap(({ from, to }) => tokens.slice(from, to).map(({ word }) => word)),
        phrases: taken.map(({ phrase, pattern }) => ({ id: phrase.id, pattern })),
      };
      return { reading, over };
    };
    const strict = attempt(isExcused);
    const mayJoinMore = strict.reading.verdict !== "log" && pieces.length > 1;
    return mayJoinMore ? better(strict, attempt(isFewStrange)) : strict;
  };

  const readLine = (heard: string): Reading => {
    const tokens = afterCallWord(tokenise(heard), callWord);
    if (!tokens || tokens.length > MOST_TOKENS) return ignored(heard);
    const find = remembering(matcher.find);
    const plain = readTokens(heard, tokens, find);
    const doubles = undoubled(heard, tokens).map((once) => ({
      ...once,
      attempt: readTokens(heard, once.tokens, find),
    }));
    for (const { attempt, numbered } of doubles) {
      const reading = takenOnce(plain.reading, attempt.reading, numbered);
      if (reading) return reading;
    }
    const repaired = repairedOf(heard, tokens, plain, find);
    for (const { attempt, tokens: fewer, numbered } of doubles) {
      const reading = takenOnce(repaired, repairedOf(heard, fewer, attempt, find), numbered);
      if (reading) return reading;
    }
    return repaired;
  };

  /** With misprints put right, where the line makes no sense as printed. */
  const repairedOf = (
    heard: string,
    tokens: readonly Token[],
    { reading: plain, over }: Attempt,
    find: Find,
  ): Reading => {
    if (plain.verdict === "log" || !isWorthRepair(over)) return plain;
    const sure = bestRepair(heard, tokens, indexesOf(over), plain, find);
    if (sure.verdict !== "ignore" || tokens.length > FEW_TOKENS) return sure;
    return bestRepair(heard, tokens, new Set(tokens.keys()), plain, find);
  };

  /**
   * Talk of others is left alone, and so is a line with a word that no pattern has and that is not
   * printed for another, since no repair can take it, or with many words that are no misprints.
   */
  const isWorthRepair = (over: readonly Item[]): boolean => {
    const sound = over.filter((item) => !("word" in item) || !isSuspect(item.word, matcher.knows));
    return (
      sound.length <= MOST_SOUND &&
      sound.every(
        (item) =>
          !("word" in item) ||
          isQuantityWord(item.word) ||
          (matcher.knows(item.word) && !isOfOthers(item.word)),
      )
    );
  };

  /** The best reading of the line with misprints put right, or `plain` if none is better. */
  const bestRepair = (
    heard: string,
    tokens: readonly Token[],
    over: ReadonlySet<number>,
    plain: Reading,
    find: Find,
  ): Reading => {
    let best = plain;
    for (const repair of repairs(tokens, over, matcher.knows)) {
      const belief = mostBelief(repair, tokens);
      if (belief === "none" || (belief === "doubtful" && best.verdict === "check")) continue;
      const { reading } = readTokens(heard, repair.tokens, find);
      if (reading.leftover.length > 0 || !isBorneOut(reading.statements, repair, tokens)) continue;
      const judged = belief === "sure" ? reading : doubted(reading);
      if (rank(judged) < rank(best)) best = judged;
      if (best.verdict === "log") break;
    }
    return best;
  };

  return readLine;
}

/**
 * The reading of a line with its doubled words taken as one, where it is better than the one as
 * printed. It is put up for a look if the line said something as printed, or the double is a number.
 */
function takenOnce(plain: Reading, once: Reading, numbered: boolean): Reading | undefined {
  const saysLess = once.verdict === "log" && once.statements.length < plain.statements.length;
  const isBetter = plain.verdict === "log" ? saysLess && !numbered : rank(once) < rank(plain);
  if (!isBetter) return undefined;
  const isSure = once.verdict !== "log" || (plain.verdict === "ignore" && !numbered);
  return isSure ? once : { ...once, verdict: "check", doubts: ["a word may have been said twice"] };
}

const doubted = (reading: Reading): Reading =>
  reading.verdict === "log"
    ? { ...reading, verdict: "check", doubts: ["a word may have been misheard"] }
    : reading;

const RANKS: Readonly<Record<Verdict, number>> = { log: 0, check: 1, ignore: 2 };

const rank = (reading: Reading): number => RANKS[reading.verdict];

const ignored = (heard: string): Reading => ({
  heard,
  verdict: "ignore",
  statements: [],
  possible: [],
  doubts: [],
  leftover: [],
  phrases: [],
});

/** Words that may stand between a fish and its size where the line makes no sense otherwise. */
const isFewStrange = (gap: readonly Item[]): boolean =>
  gap.length <= MOST_STRANGE_WORDS && gap.every(isStrange);

/** The strict attempt, unless passing over a few words makes sense of what it could not. */
const better = (strict: Attempt, lax: Attempt): Attempt => {
  if (rank(lax.reading) >= rank(strict.reading)) return strict;
  const reading =
    lax.reading.verdict === "log"
      ? { ...lax.reading, verdict: "check" as const, doubts: ["words passed over"] }
      : lax.reading;
  return { reading, over: strict.over };
};

interface Attempt {
  reading: Reading;
  over: readonly Item[];
}

/** Whether the line has a full stop between this item and the next. */
const isSentenceEnd = (heard: string, tokens: readonly Token[]) => (item: Item) => {
  const next = tokens[item.to];
  return next !== undefined && /[.!?]/.test(heard.slice(tokens[item.to - 1]?.to, next.from));
};

const indexesOf = (items: readonly Item[]): ReadonlySet<number> =>
  new Set(items.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, k) => from + k)));

/** What follows the call word; undefined where it is wanted and was not said. */
function afterCallWord(tokens: Token[], callWord: string | undefined): Token[] | undefined {
  if (callWord === undefined) return tokens;
  const words = tokenise(callWord).map((token) => token.word);
  const called = words.length > 0 && words.every((word, i) => tokens[i]?.word === word);
  return called ? tokens.slice(words.length) : undefined;
}
