import { describe, expect, it } from "vitest";
import { createReader } from "../../grammar/read.ts";

const reader = createReader();

describe("a line that lost a word and still reads well", () => {
  it.each([
    "taken and a half metres of depth",
    "trying it closer in by another and a half metres",
    "made it a and three quarters inches deeper",
    "the last fish should be a point six kilos",
    "how many I missed",
    "how many off",
    "which line's has been catching fish today",
    "broke off by fish",
    "lost small blue orfe the hook's slipped",
  ])("is put up for a look: %s", (line) =>
    expect(reader.read([line])).toMatchObject({
      verdict: "check",
      doubts: ["a word may be missing"],
    }),
  );

  it.each([
    "depth half a metre",
    "carp half a pound",
    "carp two and a half pounds",
    "carp point six of a kilo",
    "twelve and a half metres out",
    "how's the net, carp four pounds",
    "carp four pounds, how's the net",
    "lost one, got a carp",
    "lost one, then another roach",
    "lost a carp",
  ])("is told from a whole one: %s", (line) =>
    expect(reader.read([line])).toMatchObject({ verdict: "log", doubts: [] }),
  );
});

describe("a word that phrases have", () => {
  it("is not taken for one that is spelt nearly alike", () => {
    const read = reader.read(["swapped over dobber rig"]);
    expect(read.statements.map(({ kind }) => kind)).not.toContain("loss");
  });
});
