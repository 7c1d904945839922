/** Where the angler's own words begin and end: after "note", and what a nudge is about. */
import type { Token } from "../text/tokens.ts";

export interface FreeText {
  text: string;
  /** Index of the first token after it. */
  next: number;
}

const NUDGING = new Set(
  "nudge remind prompt tell warn shout ping reminder buzz beep alert timer know nudges".split(" "),
);
const CALLED = new Set(["me", "us", "reminder", "nudge", "timer", "shout", "prompt", "minute"]);

/** The free text that starts at token `i`, in the words of the line as heard. */
export function readFreeText(
  line: string,
  tokens: readonly Token[],
  i: number,
): FreeText | undefined {
  return noteText(line, tokens, i) ?? nudgeText(line, tokens, i);
}

/** "knote" is how some recognisers print it. */
const NOTING = new Set(["note", "notes", "knote"]);

/** "note to self, …" and "note that …". */
const LEADS = [["down"], ["to", "self"], ["to", "myself"], ["for", "next", "time"], ["that"]];

function noteText(line: string, tokens: readonly Token[], i: number): FreeText | undefined {
  if (!NOTING.has(tokens[i - 1]?.word ?? "")) return undefined;
  const begin = pastDouble(tokens, i);
  const lead = LEADS.find((words) => words.every((word, k) => tokens[begin + k]?.word === word));
  const start = lead && begin + lead.length < tokens.length ? begin + lead.length : begin;
  if (tokens[start]?.word === "of") return undefined;
  return slice(line, tokens, start, tokens.length);
}

function nudgeText(line: string, tokens: readonly Token[], i: number): FreeText | undefined {
  const word = tokens[i - 1]?.word;
  if (word !== "to" && word !== "about") return undefined;
  const before = tokens.slice(0, i - 1).map((token) => token.word);
  const every = tokens.findIndex((token) => token.word === "every");
  if (every < 0 || !before.some((earlier) => NUDGING.has(earlier))) return undefined;
  if (every > i && !CALLED.has(before.at(-1) ?? "")) return undefined;
  return slice(line, tokens, pastDouble(tokens, i), every > i ? every : tokens.length);
}

/** "note note, fish topping": the word that announces the text may come twice. */
const pastDouble = (tokens: readonly Token[], i: number): number =>
  tokens[i]?.word === tokens[i - 1]?.word ? i + 1 : i;

function slice(
  line: string,
  tokens: readonly Token[],
  from: number,
  next: number,
): FreeText | undefined {
  const first = tokens[from];
  const last = tokens[next - 1];
  if (!first || !last || next <= from) return undefined;
  return { text: line.slice(first.from, last.to).trim(), next };
}
