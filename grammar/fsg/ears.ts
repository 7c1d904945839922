/** What the ears inside the app are bound to: all usual sentences, with chances. */
import { sample, seededRandom } from "../jsgf/sample.ts";
import type { Node } from "../jsgf/syntax.ts";
import { compileGrammar } from "./compile.ts";
import type { Fsg } from "./fsg.ts";
import { heardGrammar } from "./heard-grammar.ts";
import { PLACEHOLDERS } from "./own-words.ts";
import { weigh } from "./weigh.ts";

/** Enough that a sentence as rare as one in a thousand counts some sixty times. */
const SENTENCES = 60_000;
const SEED = 1;

/**
 * The smallest automaton of the sentences that can be heard. Its chances are those with which the
 * sampler takes each way: every phrase as likely as any other, options said a third of the time.
 */
export function earsGrammar(): Fsg {
  const grammar = heardGrammar(PLACEHOLDERS);
  const root = grammar.rules.get(grammar.publicRule) as Node;
  const random = seededRandom(SEED);
  const sentences = Array.from({ length: SENTENCES }, () =>
    (sample(root, grammar, random) ?? "").toLowerCase().split(" "),
  );
  return weigh(compileGrammar(grammar), sentences);
}
