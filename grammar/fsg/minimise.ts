/** The smallest automaton of the same language (partition refinement, Moore 1956). */
import type { Dfa } from "./automaton.ts";

export function minimise(dfa: Dfa): Dfa {
  const live = liveStates(dfa);
  let blockOf: number[] = dfa.arcs.map((_, state) => (dfa.finals.has(state) ? 1 : 0));
  for (let blocks = 0; ; ) {
    const refined = refine(dfa, blockOf, live);
    if (refined.count === blocks) return quotient(dfa, blockOf, live);
    blocks = refined.count;
    blockOf = refined.blockOf;
  }
}

/** States from which an end can be reached; the others, and arcs to them, say nothing. */
function liveStates(dfa: Dfa): ReadonlySet<number> {
  const sources: number[][] = dfa.arcs.map(() => []);
  for (const [state, arcs] of dfa.arcs.entries())
    for (const next of arcs.values()) sources[next]?.push(state);
  const live = new Set(dfa.finals);
  for (const state of live) for (const source of sources[state] ?? []) live.add(source);
  return live;
}

/** Splits blocks whose states differ in where some word leads; the start's block is numbered 0. */
function refine(dfa: Dfa, blockOf: readonly number[], live: ReadonlySet<number>) {
  const numbers = new Map<string, number>();
  const refined = dfa.arcs.map((arcs, state) => {
    const out = [...arcs]
      .filter(([, next]) => live.has(next))
      .map(([word, next]) => `${word}>${blockOf[next]}`)
      .sort();
    const signature = `${blockOf[state]} ${out.join(" ")}`;
    const known = numbers.get(signature);
    if (known !== undefined) return known;
    numbers.set(signature, numbers.size);
    return numbers.size - 1;
  });
  return { blockOf: refined, count: numbers.size };
}

/** One state a block, in the order in which they are reached from the start. */
function quotient(dfa: Dfa, blockOf: readonly number[], live: ReadonlySet<number>): Dfa {
  const numbers = new Map([[blockOf[0] as number, 0]]);
  const representatives = [0];
  const arcs: Array<Map<string, number>> = [];
  const finals = new Set<number>();
  for (const state of representatives) {
    if (dfa.finals.has(state)) finals.add(arcs.length);
    const out = new Map<string, number>();
    for (const [word, next] of dfa.arcs[state] ?? []) {
      if (!live.has(next)) continue;
      const block = blockOf[next] as number;
      if (!numbers.has(block)) numbers.set(block, representatives.push(next) - 1);
      out.set(word, numbers.get(block) as number);
    }
    arcs.push(out);
  }
  return { arcs, finals };
}
