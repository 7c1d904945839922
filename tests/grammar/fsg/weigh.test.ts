import { describe, expect, it } from "vitest";
import type { Dfa } from "../../../grammar/fsg/automaton.ts";
import type { Fsg } from "../../../grammar/fsg/fsg.ts";
import { namesByPlace, PLACEHOLDERS } from "../../../grammar/fsg/own-words.ts";
import { withMore } from "../../../grammar/fsg/sequence.ts";
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

  it("lead to one end, whichever word was last", () => {
    expect(weigh(DFA, [])).toEqual({
      states: 4,
      start: 0,
      final: 3,
      arcs: [
        { from: 0, to: 1, chance: 1, word: "a" },
        { from: 1, to: 2, chance: 0.5, word: "b" },
        { from: 1, to: 3, chance: 0.5 },
        { from: 2, to: 3, chance: 1 },
      ],
    });
  });
});

describe("own words", () => {
  it("stand under the places they take", () => {
    const place = PLACEHOLDERS.rigs?.[0]?.spoken[0] as string;
    const own = { rigs: [{ name: "wand", spoken: ["the old wand"], soundsLike: "wonder" }] };
    expect(namesByPlace(own)[place]).toEqual([
      { spoken: "wand", soundsLike: "wonder" },
      { spoken: "the old wand" },
    ]);
  });
});

describe("several statements in a breath", () => {
  it("follow each other with a pause, or joined by a word", () => {
    const one: Fsg = {
      states: 2,
      start: 0,
      final: 1,
      arcs: [{ from: 0, to: 1, chance: 1, word: "a" }],
    };
    const back = withMore(one, 0.1).arcs.filter(({ from, to }) => from === 1 && to === 0);
    expect(back.map(({ word }) => word)).toEqual([undefined, "and", "then"]);
    const [pause, ...joined] = back.map(({ chance }) => chance);
    expect(pause).toBe(0.1);
    for (const chance of joined) expect(chance).toBeLessThan(0.1);
  });
});
