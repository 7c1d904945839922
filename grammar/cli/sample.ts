/**
 * Prints random sentences of the grammar: `sample [how many] [--seed number] [--jsgf]`. With --jsgf
 * it prints the grammar itself.
 */
import { parseArgs } from "node:util";
import { wholeGrammar } from "../grammar.ts";
import { printGrammar } from "../jsgf/grammar-text.ts";
import { sample, seededRandom } from "../jsgf/sample.ts";
import type { Node } from "../jsgf/syntax.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seed: { type: "string", default: "1" }, jsgf: { type: "boolean", default: false } },
});

const grammar = wholeGrammar();
if (values.jsgf) {
  process.stdout.write(printGrammar(grammar));
} else {
  const count = Number(positionals[0] ?? 10);
  const seed = Number(values.seed);
  if (!Number.isInteger(count) || count < 1 || !Number.isInteger(seed)) {
    process.stderr.write(
      "Say how many sentences and which seed, both whole numbers: sample 20 --seed 3\n",
    );
    process.exit(1);
  }
  const random = seededRandom(seed);
  const root = grammar.rules.get(grammar.publicRule) as Node;
  for (let i = 0; i < count; i += 1) process.stdout.write(`${sample(root, grammar, random)}\n`);
}
