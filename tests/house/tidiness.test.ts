import { expect, test } from "vitest";
import { lockedAddresses, machinePaths, strayEntries, tooLong, worthALook } from "./tidiness.ts";

const lines = (count: number) => new Map([["src/log/store.ts", "a;\n".repeat(count)]]);

test("a file may have 300 lines and no more, and is named from 150 on", () => {
  expect(tooLong(lines(300))).toEqual([]);
  expect(tooLong(lines(301))).toEqual(["src/log/store.ts has 301 lines; 300 are the most."]);
  expect(worthALook(lines(150))).toEqual([]);
  expect(worthALook(lines(151))).toEqual(["src/log/store.ts: 151 lines"]);
});

test("what has no place in the project's folder is named", () => {
  expect(strayEntries(["src", "README.md", "scripts"])).toEqual(["scripts is not known here."]);
});

test("a path of somebody's machine is named", () => {
  // Put together here, so that this file holds none.
  const home = ["", "home", "someone", "rig.ts"].join("/");
  expect(machinePaths(new Map([["src/a.ts", `one\nimport "${home}";`]]))).toEqual([
    `src/a.ts:2 names ${home}.`,
  ]);
  const addresses = `https://example.org${home} ../home/rig.ts /src/main.tsx /usr/bin/env`;
  expect(machinePaths(new Map([["src/a.ts", addresses]]))).toEqual([]);
});

test("a lock file with an address is named", () => {
  const locked = (entry: object) => JSON.stringify({ packages: { "node_modules/idb": entry } });
  expect(lockedAddresses(locked({ version: "8.0.4" }))).toEqual([]);
  expect(lockedAddresses(locked({ resolved: "https://example.org/idb.tgz" }))).toEqual([
    "node_modules/idb carries an address.",
  ]);
});
