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
import { type Part, shortlistOf } from "./shortlist.ts";

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

/** @param entries of all patterns, in order */
export function matcherOf(entries: readonly Entry[]): Matcher {
  refuseTwins(entries);
  // A pattern is taken in by the library when it is first tried: most never are.
  const parsed: ParsedMatch[] = [];
  const shortlist = shortlistOf(entries.map(({ needs }) => needs));
  const words = new Set(entries.flatMap(({ match }) => match.match(/[a-z0-9]+/g) ?? []));
  return {
    knows: (word) => words.has(encode(word)),
    find(row) {
      const encoded = row.map(encode);
      const possible = shortlist(encoded);
      if (possible.length === 0) return [];
      const view = nlp.tokenize(encoded.join(" "));
      return possible.flatMap((place) => {
        const { id, match } = entries[place] as Entry;
        parsed[place] ??= nlp.parseMatch(match);
        const found = view.match(parsed[place]) as unknown as FoundView;
        return found.fullPointer.map(([, from, to]) => ({ id, from, to }));
      });
    },
  };
}

/** A pattern as it is matched, one entry for each alternative at its top. */
export const entriesOf = (
  { id, tree }: PatternSource,
  inline: ReadonlyMap<string, Node>,
): Entry[] => topsOf(tree).map((top) => entryOf(id, top, inline));

type ParsedMatch = ReturnType<typeof nlp.parseMatch>;

/** What a view has and its type leaves out. */
interface FoundView {
  fullPointer: [sentence: number, from: number, to: number][];
}

/** One alternative at the top of a pattern. */
export interface Entry {
  id: number;
  match: string;
  /** The parts that the row must have, in words as they are matched. */
  needs: Part[];
}

/** Two entries with one match string would be one pattern twice. */
function refuseTwins(entries: readonly Entry[]): void {
  const seen = new Set<string>();
  for (const { match } of entries) {
    if (seen.has(match)) throw new Error(`two patterns compile to the same match: ${match}`);
    seen.add(match);
  }
}

/** "<weight>" and "rig" as words that no tokeniser takes apart. */
const encode = (item: string): string =>
  item.startsWith("<") ? `q${item.replace(/[^a-z]/g, "")}` : `z${item.replace(/[^a-z0-9]/g, "")}`;

const topsOf = (tree: Node): readonly Node[] => (tree.type === "choice" ? tree.items : [tree]);

function entryOf(id: number, top: Node, inline: ReadonlyMap<string, Node>): Entry {
  const items = top.type === "sequence" ? top.items : [top];
  const parts = items
    .map((item) => ({ sign: signOf(item), wordings: wordingsOf(item, inline) }))
    .filter(({ wordings }) => wordings.length > 0);
  return {
    id,
    match: parts.map(({ sign, wordings }) => `${group(wordings)}${sign}`).join(" "),
    needs: parts.filter(({ sign }) => !sign.endsWith("?")).map(({ wordings }) => wordings),
  };
}

/** `+?` is the library's spelling of "none or more" that also matches none. */
function signOf(node: Node): string {
  if (node.type === "optional") return "?";
  if (node.type === "repeat") return node.atLeast === 0 ? "+?" : "+";
  return "";
}

/** Longest first: the library takes the first that fits and does not come back. */
function wordingsOf(node: Node, inline: ReadonlyMap<string, Node>): string[][] {
  const inner = node.type === "optional" || node.type === "repeat" ? node.item : node;
  return flatten(inner, inline)
    .filter((row) => row.length > 0)
    .sort((a, b) => b.length - a.length)
    .map((row) => row.map(encode));
}

function group(wordings: readonly (readonly string[])[]): string {
  const rows = wordings.map((words) => words.join(" "));
  return rows.length === 1 && !rows[0]?.includes(" ") ? (rows[0] as string) : `(${rows.join("|")})`;
}
