import { describe, expect, it } from "vitest";
import { type Fsg, parseFsg, printFsg } from "../../../src/speech/offline/fsg.ts";
import { garbageWord, hasGarbage, withGarbage } from "../../../src/speech/offline/garbage.ts";
import { PLACE_PREFIX, withNames } from "../../../src/speech/offline/places.ts";
import { withMore } from "../../../src/speech/offline/sequence.ts";

const SMALL: Fsg = {
  states: 2,
  start: 0,
  final: 1,
  arcs: [{ from: 0, to: 1, chance: 0.5, word: "a" }],
};

describe("the text of a grammar", () => {
  it("is read as printed", () => {
    expect(parseFsg(printFsg(SMALL))).toEqual(SMALL);
    const more = withMore(SMALL, 0.1);
    expect(parseFsg(printFsg(more))).toEqual(more);
  });

  it("is refused where it says nothing", () => {
    expect(() => parseFsg("nothing")).toThrow();
  });
});

describe("the garbage branch", () => {
  it("is a loop over all sounds from the start to the end", () => {
    const { start, final, arcs } = withGarbage(SMALL, ["AA", "B"], 0.1);
    const loop = arcs.find(({ word }) => word === garbageWord("AA"))?.to as number;
    expect(
      arcs.filter(({ from, to }) => from === start && to === loop).map(({ word }) => word),
    ).toEqual(["AA", "B"].map(garbageWord));
    expect(arcs.filter(({ from, to }) => from === loop && to === loop)).toHaveLength(2);
    expect(arcs.filter(({ from, to }) => from === loop && to === final)).toHaveLength(1);
  });

  it("is told from phrases", () => {
    expect([hasGarbage("sound_aa sound_b"), hasGarbage("sounds like a bite")]).toEqual([
      true,
      false,
    ]);
  });
});

describe("names put in their places", () => {
  const place = `${PLACE_PREFIX}rig`;
  const fsg: Fsg = {
    states: 2,
    start: 0,
    final: 1,
    arcs: [{ from: 0, to: 1, chance: 0.5, word: place }],
  };

  it("leave nothing behind where there are none", () => {
    expect(withNames(fsg, {}).arcs).toEqual([]);
  });

  it("stand in their place, with as many words as they have", () => {
    const { states, arcs } = withNames(fsg, { [place]: ["wand", "the old wand"] });
    expect(states).toBe(4);
    expect(arcs).toEqual([
      { from: 0, to: 1, chance: 0.5, word: "wand" },
      { from: 0, to: 2, chance: 0.5, word: "the" },
      { from: 2, to: 3, chance: 1, word: "old" },
      { from: 3, to: 1, chance: 1, word: "wand" },
    ]);
  });
});
