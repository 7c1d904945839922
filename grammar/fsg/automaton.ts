/** Automata over words: what a grammar allows, as states and arcs. */

/** Many arcs may leave a state with one word; an arc without a word costs nothing. */
export interface Nfa {
  /** By state: its arcs. State 0 is where it starts. */
  readonly arcs: ReadonlyArray<ReadonlyArray<NfaArc>>;
  readonly final: number;
}

export interface NfaArc {
  /** Absent for a step without a word. */
  readonly word?: string;
  readonly to: number;
}

/** One arc at most leaves a state with a word. */
export interface Dfa {
  /** By state: where a word leads. State 0 is where it starts. */
  readonly arcs: ReadonlyArray<ReadonlyMap<string, number>>;
  readonly finals: ReadonlySet<number>;
}

/** The states a row of words leads through, the first included; undefined where it leads nowhere. */
export function pathOf(dfa: Dfa, words: readonly string[]): number[] | undefined {
  const path = [0];
  for (const word of words) {
    const next = dfa.arcs[path.at(-1) as number]?.get(word);
    if (next === undefined) return undefined;
    path.push(next);
  }
  return dfa.finals.has(path.at(-1) as number) ? path : undefined;
}

export const accepts = (dfa: Dfa, words: readonly string[]): boolean =>
  pathOf(dfa, words) !== undefined;

export const countArcs = (dfa: Dfa): number => dfa.arcs.reduce((sum, arcs) => sum + arcs.size, 0);

/** Every word on any arc, in alphabetical order. */
export const wordsOf = (dfa: Dfa): string[] =>
  [...new Set(dfa.arcs.flatMap((arcs) => [...arcs.keys()]))].sort();
