import { type ESTree, parseSync, Visitor } from "vite";

/** One way in which a file draws on another. */
export interface Import {
  /** As written, such as `../log/event.ts`; null where it is worked out only when run. */
  specifier: string | null;
  /** Counted from 1. */
  line: number;
  /** Whether nothing of it is left when the types are taken out. */
  typeOnly: boolean;
}

/** Parses TypeScript or JSX, and throws where it is neither. */
export function parse(path: string, source: string): ESTree.Program {
  const { program, errors } = parseSync(path, source);
  const [error] = errors;
  if (error) throw new SyntaxError(`${path}: ${error.message}`);
  return program;
}

/** The line, counted from 1, on which an offset into a source lies. */
export function lineOf(source: string, offset: number): number {
  return source.slice(0, offset).split("\n").length;
}

/**
 * Every import of a file: static, dynamic, of types, passed on, by `import("…").T`, by
 * `import x = require("…")`, by `new URL("…", import.meta.url)` (workers and worklets) and by
 * `import.meta.glob`.
 */
export function readImports(path: string, source: string): Import[] {
  const imports: Import[] = [];
  const add = (node: ESTree.Node, from: ESTree.Node | undefined, typeOnly = false) =>
    imports.push({ specifier: textOf(from), line: lineOf(source, node.start), typeOnly });
  new Visitor({
    ImportDeclaration: (node) => void add(node, node.source, onlyTypes(node)),
    ExportAllDeclaration: (node) => void add(node, node.source, node.exportKind === "type"),
    ExportNamedDeclaration: (node) => {
      if (node.source) add(node, node.source, node.exportKind === "type");
    },
    ImportExpression: (node) => void add(node, node.source),
    TSImportType: (node) => void add(node, node.source, true),
    TSExternalModuleReference: (node) => void add(node, node.expression),
    NewExpression: (node) => {
      if (isName(node.callee, "URL") && isMetaUrl(node.arguments[1])) add(node, node.arguments[0]);
    },
    CallExpression: (node) => {
      if (isMetaGlob(node.callee)) add(node, node.arguments[0]);
    },
  }).visit(parse(path, source));
  return imports;
}

function onlyTypes(node: ESTree.ImportDeclaration): boolean {
  if (node.importKind === "type") return true;
  const isType = (one: ESTree.ImportDeclarationSpecifier) =>
    one.type === "ImportSpecifier" && one.importKind === "type";
  return node.specifiers.length > 0 && node.specifiers.every(isType);
}

function textOf(node: ESTree.Node | undefined): string | null {
  return node?.type === "Literal" && typeof node.value === "string" ? node.value : null;
}

function isName(node: ESTree.Node | undefined, name: string): boolean {
  return node?.type === "Identifier" && node.name === name;
}

function isMeta(node: ESTree.Node | undefined, property: string): boolean {
  return (
    node?.type === "MemberExpression" &&
    node.object.type === "MetaProperty" &&
    isName(node.property, property)
  );
}

const isMetaUrl = (node: ESTree.Node | undefined) => isMeta(node, "url");
const isMetaGlob = (node: ESTree.Node | undefined) => isMeta(node, "glob");
