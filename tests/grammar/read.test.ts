import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createReader } from "../../grammar/read.ts";

const reader = createReader();
const kinds = (line: string) => reader.read([line]).statements.map(({ kind }) => kind);

describe("alternatives", () => {
  it("takes the first that makes sense", () => {
    const reading = reader.read(["fission chips", "fish two pounds"]);
    expect(reading).toMatchObject({ heard: "fish two pounds", verdict: "log" });
  });

  it("keeps the first where all make equal sense", () => {
    expect(reader.read(["carp two pounds", "carp three pounds"]).heard).toBe("carp two pounds");
  });

  it("prefers a sure one to a doubtful one", () => {
    expect(reader.read(["carp forty", "carp four pounds"]).heard).toBe("carp four pounds");
  });

  it("looks at five and no more", () => {
    const noise = Array.from({ length: 5 }, () => "mumble");
    expect(reader.read([...noise, "carp two pounds"]).verdict).toBe("ignore");
    expect(reader.read([...noise.slice(1), "carp two pounds"]).verdict).toBe("log");
  });

  it("says nothing of nothing", () => {
    expect(reader.read([])).toMatchObject({ heard: "", verdict: "ignore", statements: [] });
  });
});

describe("several statements in one breath", () => {
  it.each([
    ["fish, two pounds, ten centimetres shallower, feeding", ["fish", "change", "feed"]],
    ["lost one, rig two, going in", ["loss", "change", "drop"]],
    ["two pound F1, three pound tench", ["fish", "fish"]],
    ["carp four pounds how's the net", ["fish", "ask"]],
  ])("%s", (line, expected) => expect(kinds(line)).toEqual(expected));
});

describe("verdicts", () => {
  it.each([
    ["carp forty", "a bare number"],
    ["carp two hundred pounds", "an unlikely size"],
    ["roach nine pounds", "an unlikely size"],
    ["two pounds eight", "a weight without a fish"],
    ["a bit shallower", "how much was not said"],
    ["foul hooked a carp", "whether it was landed"],
    ["another three on the worm", "a bare number"],
    ["two carp, three pounds, four pounds and five pounds", "more sizes than fish"],
    ["four roach and two perch, eight ounces the lot", "whose weight it is"],
  ])("puts up for a look: %s (%s)", (line, doubt) => {
    expect(reader.read([line])).toMatchObject({ verdict: "check", doubts: [doubt] });
  });

  it.each([
    "that was a lovely fish",
    "he's had two pounds off me",
    "it's forty degrees in Spain",
    "",
    "…",
    "two eight",
  ])("ignores: %s", (line) =>
    expect(reader.read([line])).toMatchObject({ verdict: "ignore", statements: [] }),
  );

  it("keeps what talk would have stated, for an angler who says that it was none", () => {
    expect(reader.read(["he had a carp of two pounds"])).toMatchObject({
      verdict: "ignore",
      statements: [],
      possible: [{ kind: "fish", species: "carp" }],
    });
    expect(reader.read(["carp two pounds"]).possible).toHaveLength(1);
  });

  it("tells which words were left over", () => {
    expect(reader.read(["carp two pounds shimmering magnificently"])).toMatchObject({
      verdict: "check",
      leftover: ["shimmering", "magnificently"],
    });
  });
});

describe("the call word", () => {
  const called = createReader({ callWord: "hey scribe" });

  it("is asked for before everything", () => {
    expect(called.read(["carp two pounds"]).verdict).toBe("ignore");
    expect(called.read(["Hey Scribe, carp two pounds"])).toMatchObject({
      verdict: "log",
      statements: [{ kind: "fish", species: "carp" }],
    });
  });

  it("is enough in one of the alternatives", () => {
    expect(called.read(["a scribe carp", "hey scribe lost one"]).verdict).toBe("log");
  });
});

describe("the angler's own words", () => {
  const own = createReader({
    own: {
      species: [{ name: "blue orfe", spoken: ["bluey"] }],
      baits: [{ name: "cockle", spoken: ["cockle", "cockles"] }],
      rigs: [{ name: "dibbler", spoken: ["dibbler", "the little one"] }],
    },
  });

  it.each([
    ["bluey two pounds", { kind: "fish", species: "blue orfe" }],
    ["three blueys", { kind: "fish", species: "blue orfe", count: 3 }],
    ["on the red cockle", { kind: "change", bait: "cockle", baitNote: "red" }],
    ["switching to the dibbler", { kind: "change", rig: "dibbler" }],
    ["the dibbler rig", { kind: "change", rig: "dibbler" }],
    ["fed some cockles", { kind: "feed", bait: "cockle" }],
  ])("%s", (line, statement) => {
    expect(own.read([line])).toMatchObject({ verdict: "log", statements: [statement] });
  });

  const named = (name: string) => ({ name, spoken: [] });
  const hiding = createReader({
    own: {
      species: ["undo", "scratch that", "all", "two pounds", "big bream"].map(named),
      baits: ["stop nudging", "answers", "new net"].map(named),
      rigs: ["Carp", "Deep", "Best", "Hook", "what have I got"].map(named),
    },
  });

  it.each([
    ...["undo", "scratch that", "all out", "stop nudging", "short answers", "new net"],
    ...["carp two pounds", "small carp", "two foot deep", "hook pulled"],
    ...["which rig is best", "best rig", "what have I got"],
  ])("do not hide “%s”", (line) => {
    const { verdict, statements } = hiding.read([line]);
    expect({ verdict, statements }).toEqual({
      verdict: "log",
      statements: reader.read([line]).statements,
    });
  });

  it.each([
    ["make that a big bream", { kind: "amend", set: { species: "big bream" } }],
    ["big bream four pounds", { kind: "fish", species: "big bream" }],
    ["on the deep rig", { kind: "change", rig: "Deep" }],
    ["on the carp rig", { kind: "change", rig: "Carp" }],
  ])("come before the usual ones in “%s”", (line, statement) => {
    expect(hiding.read([line])).toMatchObject({ verdict: "log", statements: [statement] });
  });

  it("do not reach a reader that was not told them", () => {
    expect(reader.read(["bluey two pounds"]).verdict).not.toBe("log");
  });
});

describe("whatever is heard", () => {
  const anyLine = fc.oneof(
    fc.string({ maxLength: 10_000, unit: "binary" }),
    fc.string({ maxLength: 10_000, unit: "grapheme" }),
    fc.string({ maxLength: 400 }),
    fc
      .array(
        fc.constantFrom(
          ..."fish carp two pounds eight make that no last one was fish seven rig hook net note nudge me every 1/0 £ ½ ' \" ° - \u0000 \u202e ٣ 鯉 🐟".split(
            " ",
          ),
        ),
        { maxLength: 60 },
      )
      .map((words) => words.join(" ")),
  );

  it("is read without failing, and what is not ignored is whole", () => {
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 5 }), (alternatives) => {
        const { verdict, statements } = reader.read(alternatives);
        expect(statements.length > 0).toBe(verdict !== "ignore");
        expect(JSON.stringify(statements)).not.toMatch(/null|NaN|Infinity/);
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    "a".repeat(10_000),
    "two pounds ".repeat(900),
    "£".repeat(10_000),
    "1/".repeat(5000),
    "\u0000".repeat(9999),
  ])("also at ten thousand characters (%#)", (line) =>
    expect(reader.read([line]).verdict).toBe("ignore"),
  );
});
