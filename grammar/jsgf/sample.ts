/** Random sentences out of a grammar, the same for the same seed. */
import type { Grammar } from "./grammar-text.ts";
import type { Node } from "./syntax.ts";

export type Random = () => number;

/**
 * Numbers from 0 to 1, the same for the same whole seed: the "minimal standard" generator with
 * multiplier 48271 (Park, Miller & Stockmeyer 1993, Communications of the ACM 36:7, p. 108; from memory).
 */
export function seededRandom(seed: number): Random {
  const modulus = 2 ** 31 - 1;
  let state = (Math.abs(seed) % (modulus - 1)) + 1;
  const next = () => {
    state = (state * 48_271) % modulus;
    return (state - 1) / (modulus - 1);
  };
  // Seeds that are near each other begin near each other.
  for (let i = 0; i < 10; i += 1) next();
  return next;
}

/** Optional parts are said a third of the time; people are brief. */
const SAID_CHANCE = 1 / 3;
const MOST_REPEATS = 2;
/** JSGF's name for a rule that can't be spoken. */
export const VOID = "VOID";

/** One sentence for a tree; undefined where it leads only to <VOID>. */
export function sample(node: Node, grammar: Grammar, random: Random): string | undefined {
  const words = walk(node);
  return words?.join(" ");

  function walk(node: Node): string[] | undefined {
    switch (node.type) {
      case "word":
        return [node.word];
      case "rule": {
        const rule = grammar.rules.get(node.name);
        return node.name === VOID || !rule ? undefined : walk(rule);
      }
      case "sequence":
        return all(node.items);
      case "choice":
        return pick(node.items, node.weights ?? node.items.map(() => 1));
      case "optional":
        return random() < SAID_CHANCE ? (walk(node.item) ?? []) : [];
      case "repeat": {
        const times = node.atLeast + Math.floor(random() * MOST_REPEATS);
        return all(Array.from({ length: times }, () => node.item));
      }
    }
  }

  function all(items: readonly Node[]): string[] | undefined {
    const parts = items.map(walk);
    return parts.every((part) => part !== undefined) ? parts.flat() : undefined;
  }

  /** An alternative that can be spoken, as likely as it weighs. */
  function pick(items: readonly Node[], weights: readonly number[]): string[] | undefined {
    const rest = items.map((item, index) => ({ item, weight: weights[index] as number }));
    while (rest.length > 0) {
      const [drawn] = rest.splice(draw(rest), 1);
      const words = drawn && walk(drawn.item);
      if (words) return words;
    }
    return undefined;
  }

  function draw(rest: readonly { weight: number }[]): number {
    let left = random() * rest.reduce((sum, { weight }) => sum + weight, 0);
    const index = rest.findIndex(({ weight }) => {
      left -= weight;
      return left < 0;
    });
    return index < 0 ? rest.length - 1 : index;
  }
}
