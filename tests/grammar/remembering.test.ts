import { expect, test } from "vitest";
import { Language } from "../../grammar/language.ts";
import { remembering } from "../../grammar/match/remembering.ts";
import { createReader } from "../../grammar/read.ts";

test("a row is matched once, and another by itself", () => {
  const asked: string[] = [];
  const find = remembering((row) => {
    asked.push(row.join(" "));
    return [{ id: asked.length, from: 0, to: row.length }];
  });
  const first = find(["rig", "two"]);
  expect(find(["rig", "two"])).toEqual(first);
  expect(find(["rig"])).not.toEqual(first);
  expect(asked).toEqual(["rig two", "rig"]);
});

test("no row of a line is matched twice, however often its words are replaced", () => {
  const language = new Language();
  const { matcher } = language;
  const { find } = matcher;
  const asked: string[] = [];
  matcher.find = (row) => {
    asked.push(row.join(" "));
    return find(row);
  };
  const line = "another foul hooked won and coming adrift";
  createReader({}, language).read([line]);
  expect(asked.length).toBeGreaterThan(3);
  expect(new Set(asked).size).toBe(asked.length);
});
