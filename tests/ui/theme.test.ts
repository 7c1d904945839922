import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readSources } from "../house/disk.ts";
import { contrast, pairsOf, readThemes } from "./theme.ts";

const { light, dark } = readThemes(readFileSync("src/ui/theme.css", "utf8"));
const sheets = [...readSources(["src"], /\.css$/)].filter(([path]) => path !== "src/ui/theme.css");

// Source: WCAG 2.2 gives 21 for black on white, and 4.54 for #767676 on white (technique G18's limit).
test("contrast is worked out as the standard has it", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
  expect(contrast("#ffffff", "#767676")).toBeCloseTo(4.54, 2);
  expect(contrast("#0b2627", "#0b2627")).toBe(1);
});

test.each([
  ["light", light],
  ["dark", dark],
] as const)("every ink stands out 7:1 from its ground, in the %s theme", (_, theme) => {
  const pairs = pairsOf(theme);
  expect(pairs.length).toBeGreaterThan(10);
  const weak = pairs.filter(
    ([ink, ground]) => contrast(theme.get(ink) ?? "#000000", theme.get(ground) ?? "#000000") < 7,
  );
  expect(weak).toEqual([]);
});

test.each([
  ["light", light],
  ["dark", dark],
] as const)(
  "edges and the focus ring stand out 3:1 from where they lie, in the %s theme",
  (_, theme) => {
    const colour = (name: string) => theme.get(name) ?? "";
    for (const line of ["edge", "focus"]) {
      for (const ground of ["paper", "ticket"]) {
        expect(contrast(colour(line), colour(ground)), `${line} on ${ground}`).toBeGreaterThan(3);
      }
    }
  },
);

test("a rule that lays a ground names the ink on it", () => {
  expect(sheets.length).toBeGreaterThan(5);
  const faults = sheets.flatMap(([path, css]) =>
    [...css.matchAll(/\{([^{}]*)\}/g)].flatMap(([, rule = ""]) => {
      const ground = /background: var\(--([a-z]+)\)/.exec(rule)?.[1];
      const ink = /[^-]color: var\(--on-([a-z]+)/.exec(rule)?.[1];
      return ground !== undefined && ground !== ink ? [`${path}: ${rule.trim()}`] : [];
    }),
  );
  expect(faults).toEqual([]);
});

test("text takes its colour from the theme alone", () => {
  // What is printed, or scanned, is black on white in any light.
  const allowed = /^(var\(--[\w-]+\)|inherit|none|#fff|#000)$/;
  const faults = sheets.flatMap(([path, css]) =>
    [...css.matchAll(/\s(?:color|background): ([^;]+);/g)]
      .filter(([, value = ""]) => !allowed.test(value))
      .map(([found]) => `${path}: ${found.trim()}`),
  );
  expect(faults).toEqual([]);
});

test("nothing on the screen moves by itself", () => {
  const moving = sheets.filter(([, css]) => /\b(animation|transition|scroll-behavior)\b/.test(css));
  expect(moving.map(([path]) => path)).toEqual([]);
});

test("the page on the look states every colour with its contrast, as it is", () => {
  const rows = pairsOf(light).map(([ink, ground]) => {
    const inTheme = (theme: typeof light) => {
      const [on = "", under = ""] = [theme.get(ink), theme.get(ground)];
      return `${on} on ${under}, ${contrast(on, under).toFixed(1)}`;
    };
    return `| \`--${ink}\` on \`--${ground}\` | ${inTheme(light)} | ${inTheme(dark)} |`;
  });
  const page = readFileSync("DEVELOPERS.md", "utf8");
  const missing = rows.filter((row) => !page.includes(row));
  if (missing.length) console.log(`The rows are:\n${rows.join("\n")}`);
  expect(missing).toEqual([]);
});
