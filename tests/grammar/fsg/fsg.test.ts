import { describe, expect, it } from "vitest";
import type { Dfa } from "../../../grammar/fsg/automaton.ts";
import { type Fsg, parseFsg, printFsg } from "../../../grammar/fsg/fsg.ts";
import { garbageWord, hasGarbage, withGarbage } from "../../../grammar/fsg/garbage.ts";
import { PLACEHOLDERS, withOwnWords } from "../../../grammar/fsg/own-words.ts";
import { withMore } from "../../../grammar/fsg/sequence.ts";
import { weigh } from "../../../grammar/fsg/weigh.ts";

/** "a b" or "a". */
const DFA: Dfa = {
  arcs: [new Map([["a", 1]]), new Map([["b", 2]]), new Map()],
  finals: new Set([1, 2]),
};

const SMALL: Fsg = { states: 2, final: 1, arcs: [{ from: 0, to: 1, chance: 0.5, word: "a" }] };

describe("chances", () => {
  it("of each state add up to one", () => {
    const { arcs } = weigh(DFA, [["a", "b"], ["a"], ["a"]]);
    for (const state of [0, 1, 2]) {
      const out = arcs.filter(({ from }) => from === state);
      expect(out.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1);
    }
  });

  it("follow how often each way is taken", () => {
    const { arcs, final } = weigh(DFA, [["a", "b"], ["a"], ["a"], ["nothing", "of", "it"]]);
    const end = arcs.find(({ from, to }) => from === 1 && to === final);
    expect(end?.chance).toBeCloseTo(2.5 / 4);
  });
});

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
    const { states, arcs } = withGarbage(SMALL, ["AA", "B"], 0.1);
    expect(states).toBe(3);
    expect(arcs.filter(({ from, to }) => from === 0 && to === 2).map(({ word }) => word)).toEqual(
      ["AA", "B"].map(garbageWord),
    );
    expect(arcs.filter(({ from, to }) => from === 2 && to === 2)).toHaveLength(2);
    expect(arcs.filter(({ from, to }) => from === 2 && to === 1)).toHaveLength(1);
  });

  it("is told from phrases", () => {
    expect([hasGarbage("sound_aa sound_b"), hasGarbage("sounds like a bite")]).toEqual([
      true,
      false,
    ]);
  });
});

describe("own words", () => {
  const place = PLACEHOLDERS.rigs?.[0]?.spoken[0] as string;
  const fsg: Fsg = { states: 2, final: 1, arcs: [{ from: 0, to: 1, chance: 0.5, word: place }] };

  it("leave nothing behind where there are none", () => {
    expect(withOwnWords(fsg, {}).arcs).toEqual([]);
  });

  it("stand in their place, with as many words as they have", () => {
    const own = { rigs: [{ name: "wand", spoken: ["wand", "the old wand"] }] };
    const { states, arcs } = withOwnWords(fsg, own);
    expect(states).toBe(4);
    expect(arcs).toEqual([
      { from: 0, to: 1, chance: 0.5, word: "wand" },
      { from: 0, to: 2, chance: 0.5, word: "the" },
      { from: 2, to: 3, chance: 1, word: "old" },
      { from: 3, to: 1, chance: 1, word: "wand" },
    ]);
  });
});
