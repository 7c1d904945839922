import { readFileSync, statSync } from "node:fs";
import { expect, test } from "vitest";
import { entriesOf, readSources } from "./disk.ts";
import { brokenFloors } from "./floors.ts";
import { moduleState } from "./state.ts";
import { lockedAddresses, machinePaths, strayEntries, tooLong, worthALook } from "./tidiness.ts";

const rooms = readSources(["src", "grammar"], /\.([jt]sx?|css)$/);

test("there is a house to look at", () => {
  expect([...rooms.keys()]).toEqual(
    expect.arrayContaining(["src/main.tsx", "src/log/event.ts", "grammar/statement.ts"]),
  );
});

test("every room draws only on what lies below it", () => {
  expect(brokenFloors(rooms)).toEqual([]);
});

test("no module keeps state", () => {
  expect(moduleState(rooms)).toEqual([]);
});

test("no file has two jobs' worth of lines", () => {
  const long = worthALook(rooms);
  if (long.length) console.log(`Longer than most:\n${long.join("\n")}`);
  expect(tooLong(rooms)).toEqual([]);
});

test("the project's folder holds only what is known there", () => {
  expect(strayEntries(entriesOf("."))).toEqual([]);
});

test("no file names a path of somebody's machine", () => {
  const top = entriesOf(".");
  const folders = top.filter((name) => statSync(name).isDirectory());
  const files = top.filter((name) => statSync(name).isFile());
  const texts = [
    ...readSources(folders, /^(?!.*\.(png|wasm|bin)$)/),
    ...files.map((name) => [name, readFileSync(name, "utf8")] as const),
  ];
  expect(machinePaths(new Map(texts))).toEqual([]);
});

test("the lock file carries no addresses", () => {
  expect(lockedAddresses(readFileSync("package-lock.json", "utf8"))).toEqual([]);
});
