/** The grammar that ears are bound to: the usual ways of saying each phrase. */
import { wholeGrammar } from "../grammar.ts";
import type { Grammar } from "../jsgf/grammar-text.ts";
import { type Node, parseRightHandSide } from "../jsgf/syntax.ts";
import { PHRASES } from "../phrases/index.ts";
import type { OwnWords } from "../vocabulary/vocabulary.ts";
import { HEARD } from "./heard.ts";

/** Shared rules (species, baits, numbers) are the whole grammar's where none stands in `HEARD`. */
export function heardGrammar(own: OwnWords = {}): Grammar {
  const { name, publicRule, rules: shared } = wholeGrammar(own);
  const rules = new Map<string, Node>(shared);
  for (const [rule, source] of Object.entries(HEARD)) rules.set(rule, parseRightHandSide(source));
  const ids = PHRASES.map(({ id }) => id).filter((id) => HEARD[id] !== undefined);
  rules.set(publicRule, parseRightHandSide(ids.map((id) => `<${id}>`).join(" | ")));
  return { name, publicRule, rules };
}
