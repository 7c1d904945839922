/** Gives the arcs of an automaton the chances with which sentences take them. */
import { type Dfa, pathOf } from "./automaton.ts";
import type { Fsg, FsgArc } from "./fsg.ts";

/** Added to each count, so that what no sentence took stays possible (Jeffreys 1946). */
const PRIOR = 0.5;

/** @param sentences each a row of words; those that lead nowhere are passed over */
export function weigh(dfa: Dfa, sentences: Iterable<readonly string[]>): Fsg {
  const counts: Array<Map<string | undefined, number>> = dfa.arcs.map(() => new Map());
  for (const words of sentences) {
    for (const [index, state] of (pathOf(dfa, words) ?? []).entries()) {
      const taken = counts[state];
      taken?.set(words[index], (taken.get(words[index]) ?? 0) + 1);
    }
  }
  const final = dfa.arcs.length;
  const arcs = dfa.arcs.flatMap((_, state) =>
    withChances(arcsOf(dfa, state, final), counts[state] ?? new Map()),
  );
  return { states: final + 1, start: 0, final, arcs };
}

/** All that may be final step into the one final state without a word. */
function arcsOf(dfa: Dfa, from: number, final: number): Omit<FsgArc, "chance">[] {
  const spoken = Array.from(dfa.arcs[from] ?? [], ([word, to]) => ({ from, to, word }));
  return dfa.finals.has(from) ? [...spoken, { from, to: final }] : spoken;
}

function withChances(
  arcs: readonly Omit<FsgArc, "chance">[],
  counts: ReadonlyMap<string | undefined, number>,
): FsgArc[] {
  const weights = arcs.map(({ word }) => (counts.get(word) ?? 0) + PRIOR);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return arcs.map((arc, index) => ({ ...arc, chance: (weights[index] as number) / total }));
}
