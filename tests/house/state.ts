import { type ESTree, Visitor } from "vite";
import type { Sources } from "./floors.ts";
import { lineOf, parse } from "./imports.ts";

const CHANGERS = new Set(
  "set add delete clear push pop shift unshift splice sort reverse fill copyWithin".split(" "),
);

/** Says, a sentence each, where a module keeps something that changes while the app runs. */
export function moduleState(sources: Sources): string[] {
  return [...sources]
    .filter(([path]) => /\.[jt]sx?$/.test(path))
    .flatMap(([path, source]) => {
      const program = parse(path, source);
      const kept = topDeclarations(program);
      return [...reassignable(kept), ...changedLater(program, kept)].map(
        ({ name, node, fault }) => `${path}:${lineOf(source, node.start)} ${name} ${fault}.`,
      );
    });
}

interface Fault {
  name: string;
  node: ESTree.Node;
  fault: string;
}

function topDeclarations(program: ESTree.Program): ESTree.VariableDeclaration[] {
  return program.body.flatMap((statement) => {
    const inner = statement.type === "ExportNamedDeclaration" ? statement.declaration : statement;
    return inner?.type === "VariableDeclaration" && !inner.declare ? [inner] : [];
  });
}

function reassignable(kept: ESTree.VariableDeclaration[]): Fault[] {
  return kept.flatMap((node) => {
    const names = namesOf([node]).join(", ");
    if (node.kind === "let" || node.kind === "var") {
      return [{ name: names, node, fault: `is a module-level ${node.kind}` }];
    }
    const signal = node.declarations.some(({ init }) => callsSignal(init));
    return signal ? [{ name: names, node, fault: "is a module-level signal" }] : [];
  });
}

function callsSignal(init: ESTree.Expression | null): boolean {
  return (
    init?.type === "CallExpression" &&
    init.callee.type === "Identifier" &&
    init.callee.name === "signal"
  );
}

/** Filling a table while the module loads is no state; changing it from a function is. */
function changedLater(program: ESTree.Program, kept: ESTree.VariableDeclaration[]): Fault[] {
  const names = new Set(namesOf(kept));
  const faults: Fault[] = [];
  let depth = 0;
  const check = (node: ESTree.Node, target: ESTree.Node) => {
    const name = ownerOf(target);
    if (depth > 0 && name && names.has(name)) {
      faults.push({ name, node, fault: "lives in the module and is changed from a function" });
    }
  };
  const enter = () => void depth++;
  const leave = () => void depth--;
  new Visitor({
    FunctionDeclaration: enter,
    "FunctionDeclaration:exit": leave,
    FunctionExpression: enter,
    "FunctionExpression:exit": leave,
    ArrowFunctionExpression: enter,
    "ArrowFunctionExpression:exit": leave,
    AssignmentExpression: (node) => check(node, node.left),
    UpdateExpression: (node) => check(node, node.argument),
    UnaryExpression: (node) => {
      if (node.operator === "delete") check(node, node.argument);
    },
    CallExpression: (node) => {
      const { callee } = node;
      if (callee.type !== "MemberExpression" || callee.property.type !== "Identifier") return;
      if (!callee.computed && CHANGERS.has(callee.property.name)) check(node, callee);
    },
  }).visit(program);
  return faults;
}

/** `table` in `table.rows[2].name`; nothing for a plain name, which only a `let` lets change. */
function ownerOf(target: ESTree.Node): string | undefined {
  let node = target;
  while (node.type === "MemberExpression") node = node.object;
  return node !== target && node.type === "Identifier" ? node.name : undefined;
}

function namesOf(kept: ESTree.VariableDeclaration[]): string[] {
  return kept.flatMap(({ declarations }) =>
    declarations.flatMap(({ id }) => (id.type === "Identifier" ? [id.name] : [])),
  );
}
