/** A whole grammar as JSGF text, and back. */
import { JsgfError, type Node, parseRightHandSide, printRightHandSide } from "./syntax.ts";

/** Rules by name; the public one is what may be said. */
export interface Grammar {
  name: string;
  publicRule: string;
  rules: ReadonlyMap<string, Node>;
}

const HEADER = "#JSGF V1.0;";

export function printGrammar({ name, publicRule, rules }: Grammar): string {
  const lines = [...rules].map(
    ([rule, node]) =>
      `${rule === publicRule ? "public " : ""}<${rule}> = ${printRightHandSide(node)};`,
  );
  return `${HEADER}\n\ngrammar ${name};\n\n${lines.join("\n")}\n`;
}

/** Reads what `printGrammar` writes. Throws JsgfError for anything else. */
export function parseGrammar(text: string): Grammar {
  const lines = text.split("\n").filter((line) => line.trim() !== "");
  if (lines[0] !== HEADER) throw new JsgfError(`a grammar begins with "${HEADER}"`);
  const name = /^grammar (\S+);$/.exec(lines[1] ?? "")?.[1];
  if (!name) throw new JsgfError("the second line names the grammar");
  const rules = new Map<string, Node>();
  let publicRule = "";
  for (const line of lines.slice(2)) {
    const match = /^(public )?<([^<>\s]+)> = (.+);$/.exec(line);
    if (!match) throw new JsgfError(`no rule in "${line}"`);
    const rule = match[2] as string;
    if (rules.has(rule)) throw new JsgfError(`<${rule}> is defined twice`);
    if (match[1]) publicRule = rule;
    rules.set(rule, parseRightHandSide(match[3] as string));
  }
  return { name, publicRule, rules };
}
