/** The whole language as one JSGF grammar: out of the phrases, the vocabulary and the quantities. */
import type { Grammar } from "./jsgf/grammar-text.ts";
import { VOID } from "./jsgf/sample.ts";
import { JsgfError, type Node, parseRightHandSide } from "./jsgf/syntax.ts";
import { PHRASES } from "./phrases/index.ts";
import type { Phrase } from "./phrases/phrase.ts";
import { RULES } from "./phrases/rules.ts";
import { QUANTITY_RULES } from "./quantity/rules.ts";
import { BAITS } from "./vocabulary/baits.ts";
import { SPECIES } from "./vocabulary/species.ts";
import type { OwnWord, OwnWords } from "./vocabulary/vocabulary.ts";

/** What may follow the words that announce a correction. */
const CORRECTABLE =
  "fish weight-only corrected-size corrected-foul bare-bait hook-pulled snapped lost depth distance rig hook net";

const COLOURS_AND_SIZES = "red | white | yellow | orange | four mil | six mil | eight mil";

/** Free speech can't be bound; these stand for it. */
const SOME_TEXT =
  "fish topping by the reeds | bites on the drop | wind off the dam | feed | check the depth";

export function wholeGrammar(own: OwnWords = {}): Grammar {
  const rules = new Map<string, Node>();
  const define = (name: string, source: string) => {
    if (rules.has(name)) throw new JsgfError(`<${name}> is defined twice`);
    rules.set(name, parseRightHandSide(source));
  };
  const names = (names: readonly string[]) => names.map((name) => name.toLowerCase()).join(" | ");

  define(
    "utterance",
    [...PHRASES.filter(standsAlone).map(({ id }) => `<${id}>`), "<corrected>"].join(" | "),
  );
  define(
    "corrected",
    `<correction> (${CORRECTABLE.split(" ")
      .map((id) => `<${id}>`)
      .join(" | ")})`,
  );
  for (const { id, patterns } of PHRASES) define(id, patterns.map((p) => `(${p})`).join(" | "));
  for (const [name, source] of Object.entries({ ...RULES, ...QUANTITY_RULES }))
    define(name, source);
  const spoken = (words: readonly OwnWord[] = []) => words.flatMap((word) => word.spoken);
  define("species", names([...SPECIES.flatMap((s) => s.names), ...spoken(own.species)]));
  define("bait-name", names([...BAITS.flatMap((b) => b.names), ...spoken(own.baits)]));
  define("bait", `[${COLOURS_AND_SIZES}] <bait-name>`);
  define("own-rig", names(spoken(own.rigs)) || `<${VOID}>`);
  define("text", SOME_TEXT);
  return { name: "pegscribe", publicRule: "utterance", rules };
}

/** Whether a phrase says something without a correction before or after it. */
const standsAlone = ({ id }: Phrase): boolean => !/^correct/.test(id);
