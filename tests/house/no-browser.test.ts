import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";

/** Type-checks one source as a file of `grammar/` is, and gives what the compiler says. */
function compile(source: string): string {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    writeFileSync(join(folder, "phrase.ts"), source);
    const config = { extends: resolve("tests/house/grammar.tsconfig.json"), files: ["phrase.ts"] };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ ...config, include: [] }));
    const compiler = resolve("node_modules/typescript/bin/tsc");
    return spawnSync(process.execPath, [compiler, "--project", folder], { encoding: "utf8" })
      .stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test.each(["document.title", "window.name", "navigator.language", "localStorage", "process.env"])(
  "the grammar can't be compiled with %s",
  (name) => {
    const [global = ""] = name.split(".");
    expect(compile(`export const a = ${name};`)).toContain(`Cannot find name '${global}'`);
  },
);

test("the language itself it may use", () => {
  expect(compile("export const a = new Map([['two', 2]]).get('two');")).toBe("");
});
