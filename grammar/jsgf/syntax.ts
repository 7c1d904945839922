/**
 * The right-hand-side notation of JSGF (W3C note "JSpeech Grammar Format", 2000): words, `<rule>`,
 * `( … | … )`, `[optional]`, `*`, `+` and weights (`/3/ usual | /1/ rare`). Its tags are not used here.
 */

export type Node =
  | { type: "word"; word: string }
  | { type: "rule"; name: string }
  | { type: "sequence"; items: Node[] }
  | {
      type: "choice";
      items: Node[] /** How likely each is; absent where all are alike. */;
      weights?: number[];
    }
  | { type: "optional"; item: Node }
  | { type: "repeat"; item: Node; atLeast: 0 | 1 };

export class JsgfError extends Error {}

const LEXEMES = /\s*(?:(<[^<>\s]+>|[()[\]|*+]|[^\s()[\]|*+<>;=]+)|(\S))/g;

const WEIGHT = /^\/(\d+(?:\.\d+)?)\/$/;

/** The tree of one right-hand side. Throws JsgfError with the place where it stops making sense. */
export function parseRightHandSide(source: string): Node {
  const lexemes = lex(source);
  let at = 0;

  const choice = (): Node => {
    const weights = [weight()];
    const items = [sequence()];
    while (lexemes[at] === "|") {
      at += 1;
      weights.push(weight());
      items.push(sequence());
    }
    if (items.length === 1) return items[0] as Node;
    return weights.every((one) => one === 1)
      ? { type: "choice", items }
      : { type: "choice", items, weights };
  };

  /** An alternative without a weight counts once. */
  const weight = (): number => {
    const said = WEIGHT.exec(lexemes[at] ?? "")?.[1];
    if (said === undefined) return 1;
    at += 1;
    return Number(said);
  };

  const sequence = (): Node => {
    const items: Node[] = [];
    while (at < lexemes.length && !/^[)\]|]$/.test(lexemes[at] ?? "")) items.push(repeated());
    if (items.length === 0) throw new JsgfError(`an empty alternative in "${source}"`);
    return items.length === 1 ? (items[0] as Node) : { type: "sequence", items };
  };

  const repeated = (): Node => {
    let node = single();
    for (let sign = lexemes[at]; sign === "*" || sign === "+"; sign = lexemes[at]) {
      node = { type: "repeat", item: node, atLeast: sign === "*" ? 0 : 1 };
      at += 1;
    }
    return node;
  };

  const single = (): Node => {
    const lexeme = lexemes[at] ?? "";
    at += 1;
    if (lexeme === "(") return closed(")");
    if (lexeme === "[") return { type: "optional", item: closed("]") };
    if (lexeme.startsWith("<")) return { type: "rule", name: lexeme.slice(1, -1) };
    if (/^[*+]$/.test(lexeme)) throw new JsgfError(`"${lexeme}" follows nothing in "${source}"`);
    return { type: "word", word: lexeme };
  };

  const closed = (bracket: string): Node => {
    const inner = choice();
    if (lexemes[at] !== bracket) throw new JsgfError(`"${bracket}" is missing in "${source}"`);
    at += 1;
    return inner;
  };

  const tree = choice();
  if (at < lexemes.length) throw new JsgfError(`"${lexemes[at]}" is out of place in "${source}"`);
  return tree;
}

function lex(source: string): string[] {
  return Array.from(source.matchAll(LEXEMES), ([, lexeme, strange]) => {
    if (lexeme === undefined) throw new JsgfError(`can't read "${strange}" in "${source}"`);
    return lexeme;
  });
}

/** The notation for a tree; parsing it gives the same tree. */
export function printRightHandSide(node: Node): string {
  switch (node.type) {
    case "word":
      return node.word;
    case "rule":
      return `<${node.name}>`;
    case "sequence":
      return node.items.map(bracketed).join(" ");
    case "choice":
      return node.items
        .map((item, index) => weightOf(node, index) + printRightHandSide(item))
        .join(" | ");
    case "optional":
      return `[${printRightHandSide(node.item)}]`;
    case "repeat":
      return `${bracketed(node.item)}${node.atLeast === 0 ? "*" : "+"}`;
  }
}

const weightOf = ({ weights }: Node & { type: "choice" }, index: number): string =>
  weights ? `/${weights[index]}/ ` : "";

const bracketed = (node: Node): string =>
  node.type === "choice" || node.type === "sequence"
    ? `(${printRightHandSide(node)})`
    : printRightHandSide(node);

/** Every rule a tree names, in order of appearance, repeats included. */
export function rulesIn(node: Node): string[] {
  switch (node.type) {
    case "word":
      return [];
    case "rule":
      return [node.name];
    case "sequence":
    case "choice":
      return node.items.flatMap(rulesIn);
    case "optional":
    case "repeat":
      return rulesIn(node.item);
  }
}
