/**
 * Second thoughts about a line that made no sense as printed: words that no phrase took are
 * replaced by what they may have been misheard for.
 */
import type { Statement, StatementOf } from "./statement.ts";
import { isFiller } from "./text/fillers.ts";
import type { Token } from "./text/tokens.ts";
import { MISPRINTS, type Misprint, SUSPECTS, standsAlone } from "./vocabulary/misprints.ts";
import { nearMisses } from "./vocabulary/near-miss.ts";

export interface Repair {
  tokens: Token[];
  /** The replaced words, as printed. */
  replaced: string[];
  /** How many telling words of them no phrase had taken. */
  gone: number;
}

/** Whether some phrase has the word: then it is taken for another only where that is known to happen. */
type Knows = (word: string) => boolean;

/** One line may have several readings; beyond this many it is noise. */
const MOST_REPAIRS = 16;

/**
 * Repaired lines, those with the fewest words replaced first: wherever a misprint reaches a word
 * left over, with and without it.
 * @param over indexes of the tokens no phrase took
 */
export function repairs(
  tokens: readonly Token[],
  over: ReadonlySet<number>,
  knows: Knows,
): Repair[] {
  // Every row goes on from one that ends where it begins: open[i] are those that reach token i.
  const open: Repair[][] = [[{ tokens: [], replaced: [], gone: 0 }]];
  tokens.forEach((token, i) => {
    const here = open[i] ?? [];
    const reach = (to: number, repairs: Repair[]) => {
      open[to] = [...(open[to] ?? []), ...repairs].slice(0, MOST_REPAIRS);
    };
    reach(
      i + 1,
      here.map((repair) => ({ ...repair, tokens: [...repair.tokens, token] })),
    );
    for (const misprint of misprintsAt(tokens, i, over, knows)) {
      reach(
        i + misprint.printed.length,
        here.map((repair) => extend(repair, tokens, i, misprint, over)),
      );
    }
  });
  return (open[tokens.length] ?? [])
    .filter(({ replaced }) => replaced.length > 0)
    .sort((a, b) => a.replaced.length - b.replaced.length);
}

/** Whether a word may have been printed for another. */
export const isSuspect = (word: string, knows: Knows): boolean =>
  SUSPECTS.has(word) || (!knows(word) && nearMisses(word).length > 0);

function extend(
  { tokens: done, replaced, gone }: Repair,
  tokens: readonly Token[],
  i: number,
  { printed, meant }: Misprint,
  over: ReadonlySet<number>,
): Repair {
  const from = (tokens[i] as Token).from;
  const to = (tokens[i + printed.length - 1] as Token).to;
  return {
    tokens: [...done, ...meant.map((word) => ({ word, from, to }))],
    replaced: [...replaced, printed.join(" ")],
    gone: gone + printed.filter((word, k) => over.has(i + k) && isTelling(word)).length,
  };
}

function misprintsAt(
  tokens: readonly Token[],
  i: number,
  over: ReadonlySet<number>,
  knows: Knows,
): readonly Misprint[] {
  const { word } = tokens[i] as Token;
  const near = over.has(i) && !knows(word) ? nearMisses(word) : [];
  const rows = MISPRINTS.get(word) ?? near.map((meant) => ({ printed: [word], meant: [meant] }));
  return rows.filter(
    ({ printed }) =>
      printed.every((word, k) => tokens[i + k]?.word === word) &&
      printed.some((_, k) => over.has(i + k)),
  );
}

/** How far a repaired line is to be believed. */
export type Belief = "sure" | "doubtful" | "none";

/** As much must have been printed right as was replaced; a very short line is believed with doubt on less. */
export function mostBelief({ replaced, gone }: Repair, tokens: readonly Token[]): Belief {
  if (standsAlone(replaced)) return "sure";
  const telling = tokens.filter(({ word }) => isTelling(word)).length;
  if (telling - gone >= gone) return "sure";
  return tokens.length <= SHORT ? "doubtful" : "none";
}

/** Whether what a repaired line states bears it out: a number must stand beside a fish. */
export function isBorneOut(
  statements: readonly Statement[],
  { replaced }: Repair,
  tokens: readonly Token[],
): boolean {
  if (standsAlone(replaced)) return true;
  const isMeasured = statements.every(
    (statement) => statement.kind !== "fish" || hasSize(statement),
  );
  return isMeasured && (tokens.length <= SHORT || statements.some(isCounted));
}

const SHORT = 5;

/** Too common to vouch for anything. */
const LITTLE: ReadonlySet<string> = new Set(["a", "an", "the", "got", "that", "its", "on", "in"]);

/** Whether a number vouches for the statement. */
const isCounted = (statement: Statement): boolean =>
  Object.values(statement).some((value) => typeof value === "number") ||
  statement.kind === "amend" ||
  statement.kind === "ask";

const isTelling = (word: string): boolean => !isFiller(word) && !LITTLE.has(word);

const hasSize = (fish: StatementOf<"fish">): boolean =>
  fish.weightG !== undefined || fish.lengthMm !== undefined || fish.count !== undefined;
