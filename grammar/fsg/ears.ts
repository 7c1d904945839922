/** What the ears inside the app are bound to: all usual sentences, with chances. */
import type { Grammar } from "../jsgf/grammar-text.ts";
import { sample, seededRandom } from "../jsgf/sample.ts";
import type { Node } from "../jsgf/syntax.ts";
import { PHRASES } from "../phrases/index.ts";
import { compileGrammar } from "./compile.ts";
import type { Fsg } from "./fsg.ts";
import { heardGrammar } from "./heard-grammar.ts";
import { PLACEHOLDERS } from "./own-words.ts";
import { withMore } from "./sequence.ts";
import { weigh } from "./weigh.ts";

/** Enough that a sentence as rare as one in a thousand counts some sixty times. */
const SENTENCES = 60_000;
const SEED = 1;
/**
 * So often each example of a phrase counts beside them: the examples are what is said most, and
 * together they weigh about as much as all that is drawn.
 */
const EXAMPLE_COUNT = 200;

/**
 * Of going on to another statement in the same breath, found by measurement. Much less, and only
 * one statement in a breath is heard; besides, talk is then forced into single phrases that make
 * sense, where otherwise it falls into rows of words that make none.
 */
const MORE_CHANCE = 0.003;

/** The smallest automaton of the sentences that can be heard, with the chances of its ways. */
export function earsGrammar(): Fsg {
  const grammar = heardGrammar(PLACEHOLDERS);
  const single = weigh(compileGrammar(grammar), [...drawn(grammar), ...examples()]);
  return withMore(single, MORE_CHANCE);
}

/** Phrases and their ways by their weights, options said a third of the time. */
function drawn(grammar: Grammar): string[][] {
  const root = grammar.rules.get(grammar.publicRule) as Node;
  const random = seededRandom(SEED);
  return Array.from({ length: SENTENCES }, () => words(sample(root, grammar, random) ?? ""));
}

const examples = (): string[][] =>
  PHRASES.flatMap((phrase) => Object.keys(phrase.examples)).flatMap((example) =>
    Array.from({ length: EXAMPLE_COUNT }, () => words(example)),
  );

/** As they stand in the automaton: without the marks of writing. */
const words = (sentence: string): string[] =>
  sentence.toLowerCase().replace(/-/g, " ").replace(/[.,?]/g, "").split(" ");
