import { describe, expect, it } from "vitest";
import type { Dfa } from "../../../grammar/fsg/automaton.ts";
import { printFsg } from "../../../grammar/fsg/fsg.ts";
import { namesByPlace, PLACEHOLDERS } from "../../../grammar/fsg/own-words.ts";
import { weigh } from "../../../grammar/fsg/weigh.ts";

/** "a b" or "a". */
const DFA: Dfa = {
  arcs: [new Map([["a", 1]]), new Map([["b", 2]]), new Map()],
  finals: new Set([1, 2]),
};

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
  it("is that of the decoders", () => {
    expect(printFsg(weigh(DFA, []))).toBe(
      "FSG_BEGIN pegscribe\nNUM_STATES 4\nSTART_STATE 0\nFINAL_STATE 3\n" +
        "TRANSITION 0 1 1 a\nTRANSITION 1 2 0.5 b\nTRANSITION 1 3 0.5\nTRANSITION 2 3 1\nFSG_END\n",
    );
  });
});

describe("own words", () => {
  it("stand under the places they take", () => {
    const place = PLACEHOLDERS.rigs?.[0]?.spoken[0] as string;
    const own = { rigs: [{ name: "wand", spoken: ["wand", "the old wand"] }] };
    expect(namesByPlace(own)[place]).toEqual(["wand", "the old wand"]);
  });
});
