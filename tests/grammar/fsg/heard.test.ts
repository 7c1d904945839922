import { describe, expect, it } from "vitest";
import { accepts, countArcs } from "../../../grammar/fsg/automaton.ts";
import { compileGrammar } from "../../../grammar/fsg/compile.ts";
import { HEARD } from "../../../grammar/fsg/heard.ts";
import { heardGrammar } from "../../../grammar/fsg/heard-grammar.ts";
import { sample, seededRandom } from "../../../grammar/jsgf/sample.ts";
import { type Node, rulesIn } from "../../../grammar/jsgf/syntax.ts";
import { PHRASES } from "../../../grammar/phrases/index.ts";
import { createReader } from "../../../grammar/read.ts";
import { isYes } from "../../../src/scribe/yes.ts";
import { reviewWords } from "../../../src/words/review.ts";

const grammar = heardGrammar();
const dfa = compileGrammar(grammar);
const IDS = PHRASES.map(({ id }) => id);

/** Sizes and words said alone are corrections only after what announces one. */
const PART_OF_ANOTHER = /^correct(ed-|ion$)/;

const words = (sentence: string): string[] =>
  sentence.toLowerCase().replace(/-/g, " ").replace(/[.,?]/g, "").split(" ");

/** Words said of anything (free text) and numerals as printed can't be heard as such. */
const isSpeakable = (sentence: string): boolean =>
  !/\d/.test(sentence.replace(/f1/gi, "")) && !/\b(note|remind)\b/.test(sentence);

describe("what can be heard", () => {
  it("is every phrase", () => {
    expect(IDS.filter((id) => !HEARD[id] && !PART_OF_ANOTHER.test(id))).toEqual([]);
  });

  it("names only rules that are there, and has none that nothing names", () => {
    const named = new Set([...grammar.rules.values()].flatMap(rulesIn));
    expect([...named].filter((name) => name !== "VOID" && !grammar.rules.has(name))).toEqual([]);
    expect(Object.keys(HEARD).filter((name) => !named.has(name))).toEqual([]);
  });

  it("is nine of ten examples of the phrases", () => {
    const examples = PHRASES.flatMap((phrase) => Object.keys(phrase.examples)).filter(isSpeakable);
    const heard = examples.filter((example) => accepts(dfa, words(example)));
    expect(heard.length / examples.length).toBeGreaterThan(0.9);
  });

  it("is yes, in most ways in which Review takes it, and in no other", () => {
    const heard = reviewWords.yes.filter((line) => accepts(dfa, words(line)));
    expect(heard.length).toBeGreaterThanOrEqual(7);
    const random = seededRandom(4);
    const said = Array.from({ length: 60 }, () =>
      sample(grammar.rules.get("yes") as Node, grammar, random),
    );
    expect(said.filter((line) => !isYes(line as string))).toEqual([]);
  });

  it("stays small enough for a phone", () => {
    expect(dfa.arcs.length).toBeLessThan(3000);
    expect(countArcs(dfa)).toBeLessThan(30_000);
  });
});

describe("what is heard as a phrase", () => {
  const reader = createReader();

  it.each(IDS.filter((id) => HEARD[id]))("%s is read as one, nineteen times of twenty", (id) => {
    const random = seededRandom(3);
    const isRead = Array.from({ length: 60 }, () => {
      const sentence = sample(grammar.rules.get(id) as Node, grammar, random) as string;
      const { verdict, phrases } = reader.read([sentence]);
      return verdict !== "ignore" && (PART_OF_ANOTHER.test(id) || phrases.some((p) => p.id === id));
    });
    expect(isRead.filter(Boolean).length).toBeGreaterThanOrEqual(57);
  });
});
