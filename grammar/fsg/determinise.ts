/** From many paths for one row of words to one (subset construction, Rabin and Scott 1959). */
import type { Dfa, Nfa } from "./automaton.ts";

export function determinise(nfa: Nfa): Dfa {
  const subsets: number[][] = [];
  const numbers = new Map<string, number>();
  const numberOf = (states: Iterable<number>): number => {
    const subset = closure(nfa, states);
    const key = subset.join(" ");
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, subsets.length);
    return subsets.push(subset) - 1;
  };

  numberOf([0]);
  const arcs: Array<Map<string, number>> = [];
  // The list grows while it is walked: each new subset is worked off in its turn.
  for (const subset of subsets) {
    const out = new Map<string, number>();
    for (const [word, targets] of targetsByWord(nfa, subset)) out.set(word, numberOf(targets));
    arcs.push(out);
  }
  const finals = subsets.flatMap((subset, state) => (subset.includes(nfa.final) ? [state] : []));
  return { arcs, finals: new Set(finals) };
}

/** The states reached without a word, in ascending order. */
function closure(nfa: Nfa, states: Iterable<number>): number[] {
  const reached = new Set(states);
  for (const state of reached)
    for (const arc of nfa.arcs[state] ?? []) if (arc.word === undefined) reached.add(arc.to);
  return [...reached].sort((a, b) => a - b);
}

function targetsByWord(nfa: Nfa, subset: readonly number[]): Map<string, Set<number>> {
  const targets = new Map<string, Set<number>>();
  for (const state of subset) {
    for (const { word, to } of nfa.arcs[state] ?? []) {
      if (word === undefined) continue;
      const known = targets.get(word);
      if (known) known.add(to);
      else targets.set(word, new Set([to]));
    }
  }
  return targets;
}
