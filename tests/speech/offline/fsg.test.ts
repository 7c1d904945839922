import { describe, expect, it } from "vitest";
import type { Fsg } from "../../../grammar/fsg/fsg.ts";
import { confidenceOf, USUAL_LIMITS } from "../../../src/speech/offline/fit.ts";
import { parseFsg, printFsg } from "../../../src/speech/offline/fsg.ts";
import { LOOP_DICTIONARY, phoneLoop } from "../../../src/speech/offline/phone-loop.ts";
import { PLACE_PREFIX, withNames } from "../../../src/speech/offline/places.ts";

const SMALL: Fsg = {
  states: 2,
  start: 0,
  final: 1,
  arcs: [{ from: 0, to: 1, chance: 0.5, word: "a" }],
};

describe("the text of a grammar", () => {
  it("is that of the decoders", () => {
    expect(printFsg(SMALL)).toBe(
      "FSG_BEGIN pegscribe\nNUM_STATES 2\nSTART_STATE 0\nFINAL_STATE 1\nTRANSITION 0 1 0.5 a\nFSG_END\n",
    );
  });

  it("is read as printed", () => {
    expect(parseFsg(printFsg(SMALL))).toEqual(SMALL);
    const again: Fsg = { ...SMALL, arcs: [...SMALL.arcs, { from: 1, to: 0, chance: 0.1 }] };
    expect(parseFsg(printFsg(again))).toEqual(again);
  });

  it("is refused where it says nothing", () => {
    expect(() => parseFsg("nothing")).toThrow();
  });
});

describe("the loop of loose sounds", () => {
  it("is bound to nothing", () => {
    const { arcs, start, final } = parseFsg(phoneLoop());
    const sounds = arcs.filter(({ word }) => word !== undefined);
    expect(sounds.map(({ word }) => word)).toEqual(LOOP_DICTIONARY.map(([name]) => name));
    expect(sounds.every(({ from, to }) => from === start && to === start)).toBe(true);
    expect(arcs.some(({ from, to, word }) => from === start && to === final && !word)).toBe(true);
  });
});

describe("how sure a phrase is", () => {
  const sureness = (fit: number) => confidenceOf(fit, USUAL_LIMITS);

  it("is one half at the limit, and grows with the fit", () => {
    expect(sureness(USUAL_LIMITS.sureFrom)).toBe(0.5);
    expect(sureness(0)).toBeGreaterThan(0.9);
    expect(sureness(USUAL_LIMITS.refuseBelow)).toBeLessThan(0.5);
  });
});

describe("names put in their places", () => {
  const place = `${PLACE_PREFIX}rig`;
  const fsg: Fsg = {
    states: 2,
    start: 0,
    final: 1,
    arcs: [{ from: 0, to: 1, chance: 0.01, word: place }],
  };

  it("leave nothing behind where there are none", () => {
    expect(withNames(fsg, {}).arcs).toEqual([]);
  });

  it("stand in their place, with as many words as they have, and likelier than it", () => {
    const { states, arcs } = withNames(fsg, {
      [place]: [{ spoken: "wand" }, { spoken: "the old wand" }],
    });
    expect(states).toBe(4);
    expect(arcs).toEqual([
      { from: 0, to: 1, chance: 0.08, word: "wand" },
      { from: 0, to: 2, chance: 0.08, word: "the" },
      { from: 2, to: 3, chance: 1, word: "old" },
      { from: 3, to: 1, chance: 1, word: "wand" },
    ]);
  });
});
