import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readSources } from "./disk.ts";
import { ownSentences, toBeLowered, tooManySentences } from "./sentences.ts";

const told = (source: string, path = "src/screens/some.tsx") =>
  ownSentences(new Map([[path, source]])).map(({ text }) => text);

test.each([
  ["markup", "const a = <p>Stored safely</p>;", ["Stored safely"]],
  ["one word of markup", "const a = <p>Stored</p>;", ["Stored"]],
  ["a text", 'const a = "It is stored";', ["It is stored"]],
  ["a template", "const a = `It is $" + "{b} now stored`;", ["It is", "now stored"]],
  ["what an attribute is read as", 'const a = <p aria-label="Net" />;', ["Net"]],
])("%s is a sentence of its own", (_, source, sentences) => {
  expect(told(source)).toEqual(sentences);
});

test.each([
  ["classes", 'const a = <p class="button button-main" />;'],
  ["classes that are chosen", 'const a = <p class={b ? "row row-apart" : "row other"} />;'],
  ["drawings", 'const a = <path d="M4 6h16M4 12h16" />;'],
  ["addresses", 'import a from "some where";'],
  ["types", 'type A = "not a sentence";'],
  ["words of the words room", "const a = <p>{words.stored}</p>;"],
  ["signs", "const a = <p>“{b}” · {c}</p>;"],
])("%s are none", (_, source) => {
  expect(told(source)).toEqual([]);
});

test("only rooms that speak are looked at", () => {
  expect(told('const a = "It is stored";', "src/words/some.ts")).toEqual([]);
  expect(told('const a = "It is stored";', "src/scribe/some.ts")).toEqual(["It is stored"]);
});

test("no file holds more sentences of its own than the list of those to be moved allows", () => {
  const allowed = JSON.parse(readFileSync("tests/house/sentences-to-move.json", "utf8"));
  const sentences = ownSentences(readSources(["src"], /\.tsx?$/));
  const lower = toBeLowered(sentences, allowed);
  if (lower.length) console.log(`To be lowered in sentences-to-move.json:\n${lower.join("\n")}`);
  expect(tooManySentences(sentences, allowed)).toEqual([]);
});
