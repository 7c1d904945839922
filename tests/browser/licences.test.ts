import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { readSources } from "../house/disk.ts";
import { readImports } from "../house/imports.ts";
import { NOTICES_FILE } from "../tools/build/notices.ts";

const notices = readFileSync(join(inject("appFolder"), NOTICES_FILE), "utf8");

/** Packages that the app's own code draws on, types aside. */
const packages = new Set(
  [...readSources(["src", "grammar"], /^(?!.*\/cli\/).*\.tsx?$/)]
    .flatMap(([path, source]) => readImports(path, source))
    .flatMap(({ specifier, typeOnly }) => (specifier && !typeOnly ? [specifier] : []))
    .filter((specifier) => /^[@a-z]/.test(specifier) && !specifier.startsWith("node:"))
    .map((specifier) => /^(@[^/]+\/)?[^/]+/.exec(specifier)?.[0] as string),
);

test("every package that is built in is named with its licence", () => {
  expect(packages.size).toBeGreaterThan(5);
  for (const name of packages) expect(notices).toContain(`\n${name} `);
});

test.each([
  ["the service worker's parts", "\nworkbox-precaching "],
  ["the service worker's loader", "\n@trickfilm400/rollup-plugin-off-main-thread "],
  ["the code that fetches scripts", "\nvite "],
  ["the code that joins scripts", "\nrolldown "],
  ["the code which that is made from", "Evan Wallace"],
])("what no import tells of is named: %s", (_, name) => {
  expect(notices).toContain(name);
});

test("nothing is named that is only at work while building", () => {
  expect(notices).not.toMatch(/\n(vitest|rollup|terser) |Bundled dependencies/);
});

test.each([
  ["the decoder's", "Carnegie Mellon University"],
  ["the model's", "Alpha Cephei"],
  ["the suppressor's", "Xiph.Org Foundation"],
])("%s own terms are there in full", (_, holder) => {
  const [, terms = ""] = notices.split(holder);
  expect(terms.slice(0, 2000)).toContain("Redistribution and use in source and binary forms");
});
