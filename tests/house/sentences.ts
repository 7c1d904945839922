import { type ESTree, Visitor } from "vite";
import type { Sources } from "./floors.ts";
import { lineOf, parse } from "./imports.ts";

/**
 * Rooms that show or say something; what they say stands in `src/words/`. The ears report to the log
 * of troubles in words of their own, which nobody is shown.
 */
const SPEAKING =
  /^src\/(main\.tsx$|screens\/|scribe\/|share\/|board\/|speech\/trouble-words|log\/trouble|ui\/)/;

/** What an angler says on the sample day is data of the language, like the grammar's own examples. */
const SAYINGS = "src/scribe/sample-session.ts";

/** Attributes that are read by people, in which one word is enough to be words of its own. */
const READ = new Set(["aria-label", "alt", "hint", "label", "placeholder", "save", "title"]);

/** Attributes that are read by no one. */
const NOT_READ = new Set(["class", "d", "points", "transform", "viewBox"]);

const WORD = /\p{L}/u;
/** A list of typefaces. */
const FACES = /sans-serif$/;
const WORDS = /\p{L}{2,}[,;]?\s+\p{L}{2,}/u;

interface Sentence {
  path: string;
  line: number;
  text: string;
}

/** Every sentence that a component holds itself: letters in markup, and texts of two or more words. */
export function ownSentences(sources: Sources): Sentence[] {
  return [...sources]
    .filter(([path]) => SPEAKING.test(path) && /\.tsx?$/.test(path) && path !== SAYINGS)
    .flatMap(([path, source]) =>
      textsIn(parse(path, source)).map(({ start, text }) => ({
        path,
        line: lineOf(source, start),
        text: text.trim().replace(/\s+/g, " "),
      })),
    );
}

interface Text {
  start: number;
  text: string;
}

function textsIn(program: ESTree.Program): Text[] {
  const texts: Text[] = [];
  const passedOver: [start: number, end: number][] = [];
  const passOver = ({ start, end }: ESTree.Node) => void passedOver.push([start, end]);
  new Visitor({
    ImportDeclaration: passOver,
    ImportExpression: passOver,
    TSLiteralType: passOver,
    // What must never happen is told to whoever mends it.
    NewExpression(node) {
      if (node.callee.type === "Identifier" && node.callee.name === "Error") passOver(node);
    },
    JSXAttribute(node) {
      const name = node.name.type === "JSXIdentifier" ? node.name.name : "";
      if (NOT_READ.has(name)) passOver(node);
      const { value } = node;
      if (READ.has(name) && value?.type === "Literal" && WORD.test(String(value.value)))
        texts.push({ start: value.start, text: String(value.value) });
    },
    JSXText({ start, value }) {
      if (WORD.test(value)) texts.push({ start, text: value });
    },
    Literal({ start, value }) {
      if (typeof value === "string" && WORDS.test(value) && !FACES.test(value))
        texts.push({ start, text: value });
    },
    TemplateElement({ start, value }) {
      if (WORDS.test(value.raw)) texts.push({ start, text: value.raw });
    },
  }).visit(program);
  const isRead = ({ start }: Text) => !passedOver.some(([from, to]) => start >= from && start < to);
  const byPlace = new Map(texts.filter(isRead).map((text) => [text.start, text]));
  return [...byPlace.values()].sort((a, b) => a.start - b.start);
}

/** How many sentences each file holds. */
export function countByFile(sentences: readonly Sentence[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { path } of sentences) counts.set(path, (counts.get(path) ?? 0) + 1);
  return counts;
}

/** Says which files hold more sentences than they still may. */
export function tooManySentences(
  sentences: readonly Sentence[],
  allowed: Readonly<Record<string, number>>,
): string[] {
  const counts = countByFile(sentences);
  return sentences
    .filter(({ path }) => (counts.get(path) ?? 0) > (allowed[path] ?? 0))
    .map(({ path, line, text }) => `${path}:${line} says “${text}” itself.`);
}

/** Says which entries of the list are higher than what is left, so that it can only shrink. */
export function toBeLowered(
  sentences: readonly Sentence[],
  allowed: Readonly<Record<string, number>>,
): string[] {
  const counts = countByFile(sentences);
  return Object.entries(allowed)
    .filter(([path, most]) => (counts.get(path) ?? 0) < most)
    .map(([path, most]) => `${path}: ${most} are allowed, ${counts.get(path) ?? 0} are left.`);
}
