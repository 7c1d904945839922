/** The grammar that ears are bound to: the usual ways of saying each phrase. */
import { wholeGrammar } from "../grammar.ts";
import type { Grammar } from "../jsgf/grammar-text.ts";
import { type Node, parseRightHandSide } from "../jsgf/syntax.ts";
import { PHRASES } from "../phrases/index.ts";
import type { OwnWords } from "../vocabulary/vocabulary.ts";
import { HEARD } from "./heard.ts";

/** How often a phrase is said beside the others, which count once: common practice, no source. */
const OFTEN: Readonly<Record<string, number>> = {
  fish: 8,
  "one-more": 3,
  feeding: 4,
  "fed-by": 2,
  "fed-measure": 2,
  drop: 3,
  bite: 2,
  missed: 2,
  lost: 2,
  "depth-by": 3,
  depth: 2,
  distance: 2,
  rig: 2,
  "hook-bait": 2,
  withdraw: 2,
  correction: 3,
};

/** States nothing by itself: the answer to what Review asks. */
const YES = "yes";

/** Shared rules (species, baits, numbers) are the whole grammar's where none stands in `HEARD`. */
export function heardGrammar(own: OwnWords = {}): Grammar {
  const { name, publicRule, rules: shared } = wholeGrammar(own);
  const rules = new Map<string, Node>(shared);
  for (const [rule, source] of Object.entries(HEARD)) rules.set(rule, parseRightHandSide(source));
  const phrases = PHRASES.map(({ id }) => id).filter((id) => HEARD[id] !== undefined);
  const ids = [...phrases, YES];
  rules.set(
    publicRule,
    parseRightHandSide(ids.map((id) => `/${OFTEN[id] ?? 1}/ <${id}>`).join(" | ")),
  );
  return { name, publicRule, rules };
}
