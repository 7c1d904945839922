import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { createReader } from "../../grammar/read.ts";
import { undoubled } from "../../grammar/text/doubled.ts";
import { tokenise } from "../../grammar/text/tokens.ts";
import { isAlike } from "./alike.ts";

const reader = createReader();
const once = (line: string) =>
  undoubled(line, tokenise(line)).map(({ tokens, numbered }) => [
    tokens.map(({ word }) => word).join(" "),
    numbered,
  ]);

/** What is read of a line, as what is read of another; certain only where the table says so. */
const expectAlike = (line: string, meant: string, verdict: "log" | "check") => {
  const read = reader.read([line]);
  const expected = reader.read([meant]).statements;
  expect(expected).not.toEqual([]);
  expect(isAlike(expected, read.statements), JSON.stringify(read)).toBe(true);
  expect(read.verdict).toBe(verdict);
};

describe("words said twice", () => {
  it.each([
    ["fish fish two pounds", [["fish two pounds", false]]],
    ["depth depth depth four foot", [["depth four foot", false]]],
    [
      "carp carp two two pounds",
      [
        ["carp two two pounds", false],
        ["carp two pounds", true],
      ],
    ],
    ["carp forty five forty five centimetres", [["carp forty five centimetres", true]]],
    ["carp forty forty five centimetres", [["carp forty five centimetres", true]]],
    ["it is is eight foot deep", [["its eight foot deep", false]]],
    ["I I am on the worm", [["im on the worm", false]]],
    ["carp um carp two pounds", [["carp two pounds", false]]],
    ["carp to to pounds", [["carp to pounds", true]]],
    ["six six point five degrees", [["six point five degrees", true]]],
  ])("are taken as one: %s", (line, expected) => expect(once(line)).toEqual(expected));

  it.each([
    "carp twenty two two",
    "one one five",
    "two two hundred grams",
    "carp. carp two pounds",
    "two pounds two ounces",
  ])("are left where they have sense: %s", (line) => expect(once(line)).toEqual([]));
});

describe("a line with words said twice", () => {
  it.each([
    ["depth depth four foot", "depth four foot"],
    ["switched to to corn", "switched to corn"],
    ["how how deep are they biting", "how deep are they biting"],
    ["distance to to fifteen metres", "distance to fifteen metres"],
    ["something brushed the line line", "something brushed the line"],
    ["on the red red six mil pellet", "on the red six mil pellet"],
    ["note note fish topping", "note fish topping"],
    ["remind me to to feed every ten minutes", "remind me to feed every ten minutes"],
  ])("is logged as it would be with them said once: %s", (line, meant) =>
    expectAlike(line, meant, "log"),
  );

  it.each([
    ["carp two two pounds", "carp two pounds"],
    ["hook eighteen eighteen", "hook eighteen"],
    ["carp carp two pounds", "carp two pounds"],
    ["potted in fifty grams grams of pellet", "potted in fifty grams of pellet"],
    ["a bit bit shallower", "a bit shallower"],
  ])("is put up for a look where it may mean two things: %s", (line, meant) =>
    expectAlike(line, meant, "check"),
  );

  it.each([
    ["two two pound carp", { count: 2, species: "carp" }],
    ["carp two two", { species: "carp", weightG: 34 * (453.59237 / 16) }],
    ["bite bite", { kind: "sign" }],
  ])("is read as it stands where it has sense: %s", (line, statement) =>
    expect(reader.read([line])).toMatchObject({ verdict: "log", statements: [statement] }),
  );

  it("keeps the angler's own words as he said them", () => {
    const read = reader.read(["note fish topping by the the reeds"]);
    expect(read).toMatchObject({ statements: [{ text: "fish topping by the the reeds" }] });
  });

  it("is no less talk for it", () => {
    const talk = ["chatter.txt", "bankside-chatter.txt"].flatMap((file) =>
      readFileSync(new URL(`./tables/${file}`, import.meta.url), "utf8")
        .split("\n")
        .filter((line) => line.trim() !== "" && !line.startsWith("#")),
    );
    // In each line another word is doubled, so that every place is tried.
    const logged = talk.filter((line, i) => {
      const words = line.split(" ");
      const at = i % words.length;
      const doubled = [...words.slice(0, at + 1), ...words.slice(at)].join(" ");
      return reader.read([doubled]).verdict === "log";
    });
    expect(talk.length).toBeGreaterThan(1300);
    expect(logged).toEqual([]);
  });
});
