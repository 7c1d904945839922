import { describe, expect, it } from "vitest";
import { accepts, countArcs, type Dfa } from "../../../grammar/fsg/automaton.ts";
import { compileGrammar } from "../../../grammar/fsg/compile.ts";
import type { Grammar } from "../../../grammar/jsgf/grammar-text.ts";
import { type Random, sample, seededRandom } from "../../../grammar/jsgf/sample.ts";
import { JsgfError, type Node, parseRightHandSide } from "../../../grammar/jsgf/syntax.ts";

const grammarOf = (rules: Record<string, string>): Grammar => ({
  name: "test",
  publicRule: Object.keys(rules)[0] as string,
  rules: new Map(Object.entries(rules).map(([id, rhs]) => [id, parseRightHandSide(rhs)])),
});

/** Where a tree can have got to in a row of words that begins at `at`; knows nothing of automata. */
function ends(node: Node, words: readonly string[], at: number, grammar: Grammar): Set<number> {
  switch (node.type) {
    case "word":
      return new Set(words[at] === node.word ? [at + 1] : []);
    case "rule": {
      const rule = grammar.rules.get(node.name);
      return rule ? ends(rule, words, at, grammar) : new Set();
    }
    case "choice":
      return new Set(node.items.flatMap((item) => [...ends(item, words, at, grammar)]));
    case "optional":
      return new Set([at, ...ends(node.item, words, at, grammar)]);
    case "sequence": {
      let reached = new Set([at]);
      for (const item of node.items) {
        reached = new Set([...reached].flatMap((at) => [...ends(item, words, at, grammar)]));
      }
      return reached;
    }
    case "repeat": {
      const reached = new Set(node.atLeast === 0 ? [at] : ends(node.item, words, at, grammar));
      for (const at of reached)
        for (const next of ends(node.item, words, at, grammar)) reached.add(next);
      return reached;
    }
  }
}

const allows = (grammar: Grammar, words: readonly string[]): boolean =>
  ends({ type: "rule", name: grammar.publicRule }, words, 0, grammar).has(words.length);

/** A sentence found by walking at random; undefined where the walk takes too long to end. */
function walk(dfa: Dfa, random: Random): string[] | undefined {
  const words: string[] = [];
  for (let state = 0; words.length < 30; ) {
    const arcs = [...(dfa.arcs[state] ?? [])];
    if (dfa.finals.has(state) && (arcs.length === 0 || random() < 0.4)) return words;
    const [word, next] = arcs[Math.floor(random() * arcs.length)] as [string, number];
    words.push(word);
    state = next;
  }
  return undefined;
}

const GRAMMARS: Record<string, string>[] = [
  { all: "a b | a c | d [b]" },
  { all: "[a] [b] a* (b | c)+" },
  { all: "<size> <thing>+ | no <thing>", size: "[very] (big | small)", thing: "fish | big fish" },
  { all: "(a | b)* a (a | b) (a | b)" },
  { all: "<x> <x> | <y>", x: "[a] b", y: "a <x>* c" },
  { all: "a <VOID> | b" },
];

describe.each(GRAMMARS)("the automaton of $all", (rules) => {
  const grammar = grammarOf(rules);
  const dfa = compileGrammar(grammar);

  it("takes every sentence of the grammar", () => {
    const random = seededRandom(1);
    for (let i = 0; i < 200; i += 1) {
      const sentence = sample(parseRightHandSide(`<${grammar.publicRule}>`), grammar, random);
      if (sentence !== undefined)
        expect(accepts(dfa, sentence.split(" ").filter(Boolean))).toBe(true);
    }
  });

  it("takes nothing else", () => {
    const random = seededRandom(2);
    for (let i = 0; i < 200; i += 1) {
      const words = walk(dfa, random);
      if (words) expect(allows(grammar, words), words.join(" ")).toBe(true);
    }
  });

  it("has no two states that could be one", () => {
    expect(distinguishable(dfa)).toBe((dfa.arcs.length * (dfa.arcs.length - 1)) / 2);
  });
});

/** The number of pairs of states with different futures (table filling, Hopcroft and Ullman 1979). */
function distinguishable({ arcs, finals }: Dfa): number {
  const differ = new Set<string>();
  const key = (a: number, b: number) => (a < b ? `${a} ${b}` : `${b} ${a}`);
  for (let before = -1; before !== differ.size; ) {
    before = differ.size;
    for (let a = 0; a < arcs.length; a += 1) {
      for (let b = a + 1; b < arcs.length; b += 1) {
        const words = new Set([...(arcs[a]?.keys() ?? []), ...(arcs[b]?.keys() ?? [])]);
        const differs = [...words].some((word) => {
          const [x, y] = [arcs[a]?.get(word), arcs[b]?.get(word)];
          return x === undefined || y === undefined || (x !== y && differ.has(key(x, y)));
        });
        if (finals.has(a) !== finals.has(b) || differs) differ.add(key(a, b));
      }
    }
  }
  return differ.size;
}

describe("known sizes", () => {
  /** n + 1 letters back: 2^(n+1) states, the textbook's worst case (Hopcroft and Ullman 1979). */
  it("has eight states where the third last of two letters is fixed", () => {
    const dfa = compileGrammar(grammarOf({ all: "(a | b)* a (a | b) (a | b)" }));
    expect([dfa.arcs.length, countArcs(dfa)]).toEqual([8, 16]);
  });

  it("shares what sentences have in common, at both ends", () => {
    const dfa = compileGrammar(grammarOf({ all: "a b c | a d c" }));
    expect([dfa.arcs.length, countArcs(dfa)]).toEqual([4, 4]);
  });
});

describe("what no automaton can follow", () => {
  it.each([{ all: "a <all>" }, { all: "<x>", x: "b [<all>]" }, { all: "a <nowhere>" }])(
    "%o is refused",
    (rules) => {
      expect(() => compileGrammar(grammarOf(rules))).toThrow(JsgfError);
    },
  );
});
