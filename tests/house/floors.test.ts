import { expect, test } from "vitest";
import { brokenFloors } from "./floors.ts";

const look = (path: string, source: string) => brokenFloors(new Map([[path, source]]));

test("a room may draw on the rooms below it, and on itself", () => {
  const house = new Map([
    ["src/main.tsx", 'import { Live } from "./screens/live.tsx"; export const a = <Live />;'],
    ["src/screens/live.tsx", 'import { fold } from "../log/session.ts"; fold();'],
    ["src/scribe/scribe.ts", 'import type { Recogniser } from "../speech/recogniser.ts";'],
    ["src/share/text.ts", 'import { rate } from "../analysis/rate.ts"; rate();'],
    ["src/analysis/rate.ts", 'import type { Session } from "../log/session.ts";'],
    ["src/log/event.ts", 'import { statement } from "../../grammar/statement.ts"; statement();'],
    ["src/ui/button.tsx", 'import { h } from "./h.ts"; import "./button.css"; h();'],
    ["grammar/read.ts", 'export * from "./phrases/fish.ts";'],
  ]);
  expect(brokenFloors(house)).toEqual([]);
});

test.each([
  ["src/log/store.ts", "../scribe/scribe.ts", "log may not draw on scribe."],
  ["src/log/store.ts", "../main.tsx", "log may not draw on main."],
  ["src/speech/listener.ts", "../log/event.ts", "speech may not draw on log."],
  [
    "src/speech/listener.ts",
    "../../grammar/statement.ts",
    "speech may draw on grammar for types only.",
  ],
  ["src/analysis/rate.ts", "../speech/talkback.ts", "analysis may not draw on speech."],
  ["src/share/text.ts", "../scribe/answer.ts", "share may not draw on scribe."],
  ["src/scribe/answer.ts", "../screens/live.tsx", "scribe may not draw on screens."],
  ["src/ui/chart.tsx", "../log/session.ts", "ui may not draw on log."],
  ["src/ui/chart.tsx", "../../grammar/statement.ts", "ui may not draw on grammar."],
  ["grammar/read.ts", "../src/log/event.ts", "grammar may not draw on log."],
])("%s may not import %s", (path, specifier, why) => {
  const [complaint, ...more] = look(path, `import "${specifier}";`);
  expect(complaint).toMatch(`${path}:1 imports `);
  expect(complaint).toMatch(why);
  expect(more).toEqual([]);
});

test.each([
  ["static", 'import { fold } from "../log/session.ts";'],
  ["static, of everything", 'import * as session from "../log/session.ts";'],
  ["for what it does", 'import "../log/session.ts";'],
  ["dynamic", 'const later = () => import("../log/session.ts");'],
  ["of types", 'import type { Session } from "../log/session.ts";'],
  ["of types, one by one", 'import { type Session } from "../log/session.ts";'],
  ["of a type in place", 'let a: import("../log/session.ts").Session;'],
  ["passed on", 'export { fold } from "../log/session.ts";'],
  ["passed on, types", 'export type { Session } from "../log/session.ts";'],
  ["passed on, everything", 'export * from "../log/session.ts";'],
  ["passed on, all types", 'export type * from "../log/session.ts";'],
  ["by require", 'import session = require("../log/session.ts");'],
  ["as a worker", 'new Worker(new URL("../log/session.ts", import.meta.url));'],
  ["with a query", 'import url from "../log/session.ts?worker&url";'],
  ["from the top folder", 'import { fold } from "/src/log/session.ts";'],
])("an import is seen when it is %s", (_, source) => {
  const complaint = "imports src/log/session.ts: ui may not draw on log.";
  expect(look("src/ui/chart.ts", `// a line above\n${source}`)).toEqual([
    `src/ui/chart.ts:2 ${complaint}`,
  ]);
});

test("an import that can't be told from reading is refused", () => {
  const complaint = ["src/ui/chart.ts:1 imports what can't be told from reading it."];
  expect(look("src/ui/chart.ts", "import(name);")).toEqual(complaint);
  expect(look("src/ui/chart.ts", "import.meta.glob(['../log/*.ts']);")).toEqual(complaint);
});

test("the sums know the shapes of a session, not how one is made", () => {
  const mixed = 'import { type Session, fold } from "../log/session.ts";';
  expect(look("src/analysis/rate.ts", mixed)).toEqual([
    "src/analysis/rate.ts:1 imports src/log/session.ts: analysis may draw on log for types only.",
  ]);
  expect(look("src/analysis/rate.ts", 'import { type A } from "../log/session.ts";')).toEqual([]);
});

test.each([
  ["compromise/one", "grammar/match/compromise.ts", "grammar/read.ts"],
  ["idb", "src/log/idb-store.ts", "src/log/store.ts"],
  ["node:fs", "grammar/cli/read.ts", "src/share/file.ts"],
])("%s belongs to %s, not to %s", (name, home, elsewhere) => {
  expect(look(home, `import a from "${name}";`)).toEqual([]);
  const [complaint] = look(elsewhere, `import a from "${name}";`);
  expect(complaint).toMatch(`${elsewhere}:1 imports ${name}, which only `);
});

test.each(["src/store.ts", "src/attic/store.ts", "src/grammar/read.ts", "ui/chart.ts"])(
  "%s stands in no room",
  (path) => expect(look(path, "")).toEqual([`${path} stands in no room.`]),
);

test("what lies outside the rooms can't be drawn on", () => {
  expect(look("src/share/file.ts", 'import a from "../../tests/browser/chromium.ts";')).toEqual([
    "src/share/file.ts:1 imports tests/browser/chromium.ts, which stands in no room.",
  ]);
});

test("a file that can't be parsed is no file without imports", () => {
  expect(() => look("src/ui/chart.ts", "import {")).toThrow("src/ui/chart.ts");
});
