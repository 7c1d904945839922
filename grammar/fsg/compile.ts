/** From a grammar to the smallest automaton of the sentences it allows. */
import type { Grammar } from "../jsgf/grammar-text.ts";
import { JsgfError } from "../jsgf/syntax.ts";
import type { Dfa } from "./automaton.ts";
import { determinise } from "./determinise.ts";
import { minimise } from "./minimise.ts";
import { NfaBuilder } from "./nfa-builder.ts";

/**
 * Each rule is made small by itself before it is put into those that name it: the whole, written
 * out at once, would be a hundred times larger on the way. Throws JsgfError for a rule that is not
 * defined, or that names itself, which no finite automaton can follow.
 */
export function compileGrammar(grammar: Grammar): Dfa {
  const done = new Map<string, Dfa>();
  const open = new Set<string>();
  const ruleOf = (name: string): Dfa => {
    const known = done.get(name);
    if (known) return known;
    const node = grammar.rules.get(name);
    if (!node) throw new JsgfError(`<${name}> is not defined`);
    if (open.has(name)) throw new JsgfError(`<${name}> names itself`);
    open.add(name);
    const dfa = minimise(determinise(new NfaBuilder(ruleOf).build(node)));
    open.delete(name);
    done.set(name, dfa);
    return dfa;
  };
  return ruleOf(grammar.publicRule);
}
