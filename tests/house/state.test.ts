import { expect, test } from "vitest";
import { moduleState } from "./state.ts";

const look = (source: string) => moduleState(new Map([["src/log/store.ts", source]]));

test.each([
  ["let count = 0;", "count is a module-level let."],
  ["export let count = 0;", "count is a module-level let."],
  ["var count = 0;", "count is a module-level var."],
  ["const count = signal(0);", "count is a module-level signal."],
  ["const seen = new Set(); const add = (a) => seen.add(a);", "seen lives in"],
  ["const rows = []; function keep(a) { rows.push(a); }", "rows lives in"],
  ["const box = {}; class A { put(a) { box.a = a; } }", "box lives in"],
  ["const box = {}; const put = (a) => { box[a].n++; };", "box lives in"],
  ["const box = {}; const drop = (a) => { delete box[a]; };", "box lives in"],
  ["export const rows = []; export const cut = () => rows.splice(0);", "rows lives in"],
])("%s is found out", (source, complaint) => {
  const found = look(`// a line above\n${source}`);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(`src/log/store.ts:2 ${complaint}`);
});

test.each([
  "const LIMIT = 3;",
  "const table = new Map(); for (const a of [1, 2]) table.set(a, a);",
  "const rows = [3, 1]; const sorted = () => [...rows].sort();",
  "function make() { let count = 0; const seen = new Set(); seen.add(1); return () => ++count; }",
  "class Store { #rows = []; put(a) { this.#rows.push(a); } }",
  "declare let given: number;",
])("%s is no module-level state", (source) => expect(look(source)).toEqual([]));
