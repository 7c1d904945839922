/** All the word rows a tree stands for, where they are few; slots stay as "<name>". */
import { contractWords } from "../text/contraction.ts";
import { isFiller } from "../text/fillers.ts";
import { JsgfError, type Node } from "./syntax.ts";

/** Beyond this a group is no longer readable at one glance, nor quick to match. */
const MOST_ROWS = 400;

/**
 * Rows of words and "<slot>"s, without words that carry nothing. Rules found in `inline` are written out; all others are slots.
 * Throws JsgfError for a repeat inside a group and for a group of too many rows.
 */
export function flatten(node: Node, inline: ReadonlyMap<string, Node>): string[][] {
  const rows = unique(flattenNode(node, inline).map(contractWords));
  if (rows.length > MOST_ROWS) throw new JsgfError(`a group of ${rows.length} alternatives`);
  return rows;
}

function flattenNode(node: Node, inline: ReadonlyMap<string, Node>): string[][] {
  switch (node.type) {
    case "word":
      return isFiller(plainWord(node.word)) ? [[]] : [[plainWord(node.word)]];
    case "rule": {
      const rule = inline.get(node.name);
      return rule ? flattenNode(rule, inline) : [[`<${node.name}>`]];
    }
    case "choice":
      return node.items.flatMap((item) => flattenNode(item, inline));
    case "optional":
      return [[], ...flattenNode(node.item, inline)];
    case "sequence":
      return node.items.reduce<string[][]>(
        (rows, item) =>
          rows.flatMap((row) => flattenNode(item, inline).map((next) => [...row, ...next])),
        [[]],
      );
    case "repeat":
      throw new JsgfError("a repeat inside a group");
  }
}

/** A word as the tokens have it: "wind's" is written in patterns for eyes, "winds" is matched. */
export const plainWord = (word: string): string => word.toLowerCase().replace(/['’]/g, "");

const unique = (rows: readonly string[][]): string[][] => [
  ...new Map(rows.map((row) => [row.join(" "), row])).values(),
];
