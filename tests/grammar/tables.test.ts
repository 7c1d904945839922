import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { createReader } from "../../grammar/read.ts";
import { isAlike } from "./alike.ts";
import { misprints } from "./tables/misprints.ts";
import { paraphrases } from "./tables/paraphrases.ts";

const reader = createReader();

describe("paraphrases", () => {
  it.each(paraphrases.map(({ means, said }) => [said[0], means, said] as const))(
    "%s",
    (_, means, said) => {
      const misread = said.filter((line) => !isAlike(means, reader.read([line]).statements));
      expect(misread).toEqual([]);
    },
  );
});

/**
 * Printed so that only the weight beside it tells; a sentence of talk begins the same way. Read as a
 * weight to look at.
 */
const TOO_FAR = new Set(["I'd a pound and a half"]);

describe("misprints", () => {
  it("are at least 120 rows", () => expect(misprints.length).toBeGreaterThanOrEqual(120));

  it("are all read as what was meant, but for those too far off", () => {
    const misread = misprints.filter(([printed, meant]) => {
      const expected = reader.read([meant]).statements;
      return expected.length === 0 || !isAlike(expected, reader.read([printed]).statements);
    });
    expect(misread.map(([printed]) => printed).filter((line) => !TOO_FAR.has(line))).toEqual([]);
  });
});

describe("chatter", () => {
  const lines = readFileSync(new URL("./tables/chatter.txt", import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "" && !line.startsWith("#"));
  const verdicts = lines.map((line) => [line, reader.read([line]).verdict] as const);

  it("is at least 150 lines", () => expect(lines.length).toBeGreaterThanOrEqual(150));

  it("is never logged", () => {
    expect(verdicts.filter(([, verdict]) => verdict === "log")).toEqual([]);
  });

  it("is put up for a look in at most one line of a hundred", () => {
    const doubtful = verdicts.filter(([, verdict]) => verdict === "check");
    expect(doubtful.length).toBeLessThanOrEqual(lines.length / 100);
  });
});
