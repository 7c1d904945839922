/**
 * The one place that knows compromise: phrase patterns go in as JSGF trees, an utterance as a row of
 * items, and out come the stretches that each pattern matches. Slots (a weight, a species) arrive
 * already read and stand in the row as one item each.
 *
 * compromise splits contractions, lower-cases and trims punctuation on its own account, which would
 * move the positions; so every word is written with a letter in front that makes it no English word.
 */
import nlp from "compromise/one";
import { flatten } from "../jsgf/flatten.ts";
import type { Node } from "../jsgf/syntax.ts";

export interface PatternSource {
  /** Comes back with every match. */
  id: number;
  tree: Node;
}

export interface Stretch {
  id: number;
  /** Half-open range of items. */
  from: number;
  to: number;
}

export interface Matcher {
  /** Every stretch of the row that a pattern matches; in no order, overlaps included. */
  find(row: readonly string[]): Stretch[];
  /** Whether any pattern has the word. */
  knows(word: string): boolean;
}

interface SweepFind {
  id: number;
  view: { fullPointer: [sentence: number, from: number, to: number][] };
}

/** What the library does and its types leave out. */
interface SweepView {
  sweep(net: unknown): { found: SweepFind[] };
}

export function buildMatcher(
  sources: readonly PatternSource[],
  inline: ReadonlyMap<string, Node>,
): Matcher {
  const nets = distinct(
    sources.flatMap(({ id, tree }) => matchStrings(tree, inline).map((match) => ({ id, match }))),
  );
  const net = nlp.buildNet(nets as unknown as Parameters<typeof nlp.buildNet>[0]);
  const words = new Set(nets.flatMap(({ match }) => match.match(/[a-z0-9]+/g) ?? []));
  return {
    knows: (word) => words.has(encode(word)),
    find(row) {
      if (row.length === 0) return [];
      const view = nlp.tokenize(row.map(encode).join(" ")) as unknown as SweepView;
      return view
        .sweep(net)
        .found.flatMap(({ id, view: found }) =>
          found.fullPointer.map(([, from, to]) => ({ id, from, to })),
        );
    },
  };
}

/** Two entries with one match string would collapse into the first inside the library. */
function distinct<T extends { match: string }>(entries: readonly T[]): T[] {
  const seen = new Set<string>();
  return entries.filter(({ match }) => {
    if (seen.has(match)) throw new Error(`two patterns compile to the same match: ${match}`);
    seen.add(match);
    return true;
  });
}

/** "<weight>" and "rig" as words that no tokeniser takes apart. */
const encode = (item: string): string =>
  item.startsWith("<") ? `q${item.replace(/[^a-z]/g, "")}` : `z${item.replace(/[^a-z0-9]/g, "")}`;

/** One match string for each alternative at the top of a tree. */
function matchStrings(tree: Node, inline: ReadonlyMap<string, Node>): string[] {
  const tops = tree.type === "choice" ? tree.items : [tree];
  return tops.map((top) => {
    const items = top.type === "sequence" ? top.items : [top];
    return items
      .map((item) => matchPart(item, inline))
      .filter((part) => part !== "")
      .join(" ");
  });
}

/** `+?` is the library's spelling of "none or more" that also matches none. */
function matchPart(node: Node, inline: ReadonlyMap<string, Node>): string {
  const inner = node.type === "optional" || node.type === "repeat" ? node.item : node;
  const words = group(inner, inline);
  return words === "" ? "" : `${words}${signOf(node)}`;
}

function signOf(node: Node): string {
  if (node.type === "optional") return "?";
  if (node.type === "repeat") return node.atLeast === 0 ? "+?" : "+";
  return "";
}

/** Longest alternative first: the library takes the first that fits and does not come back. */
function group(node: Node, inline: ReadonlyMap<string, Node>): string {
  const rows = flatten(node, inline)
    .filter((row) => row.length > 0)
    .sort((a, b) => b.length - a.length)
    .map((row) => row.map(encode).join(" "));
  if (rows.length === 0) return "";
  return rows.length === 1 && !rows[0]?.includes(" ") ? (rows[0] as string) : `(${rows.join("|")})`;
}
