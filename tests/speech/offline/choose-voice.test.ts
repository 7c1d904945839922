import { describe, expect, it } from "vitest";
import {
  chooseVoice,
  type Hearing,
  takenRight,
  talkTaken,
} from "../../../src/speech/offline/choose-voice.ts";
import { limitsOf, USUAL_VOICE } from "../../../src/speech/offline/suit.ts";

const { refuseBelow } = limitsOf(USUAL_VOICE);
const takes = (count: number, isRight: boolean, fit: number) =>
  Array.from({ length: count }, () => ({ isRight, fit }));
const hearing = (part: Partial<Hearing>): Hearing => ({
  accent: USUAL_VOICE.accent,
  warp: 1,
  phrases: takes(20, true, refuseBelow + 8),
  talk: [],
  talks: 6,
  ...part,
});

describe("what suits a voice", () => {
  it("is the usual where all is heard right and no talk is taken", () => {
    expect(chooseVoice([hearing({}), hearing({ accent: "northern" })])).toEqual(USUAL_VOICE);
  });

  it("is the usual where there is nothing to go by", () => {
    expect(chooseVoice([])).toEqual(USUAL_VOICE);
    expect(chooseVoice([hearing({ phrases: [], talks: 0 })])).toEqual(USUAL_VOICE);
  });

  it("is the accent that hears more phrases right", () => {
    const phrases = [...takes(15, true, refuseBelow + 8), ...takes(5, false, refuseBelow + 8)];
    const choice = chooseVoice([hearing({ phrases }), hearing({ accent: "northern" })]);
    expect(choice.accent).toBe("northern");
  });

  it("is the warp that hears more phrases right", () => {
    const phrases = [...takes(15, true, refuseBelow + 8), ...takes(5, false, refuseBelow + 8)];
    expect(chooseVoice([hearing({ phrases }), hearing({ warp: 0.8 })])).toEqual({
      ...USUAL_VOICE,
      warp: 0.8,
    });
  });

  it("believes more where phrases are refused, and takes no talk by it", () => {
    const phrases = [...takes(12, true, refuseBelow + 8), ...takes(8, true, refuseBelow - 2)];
    const quiet = hearing({ phrases });
    const choice = chooseVoice([quiet]);
    expect(choice.shift).toBe(-2);
    expect(takenRight(quiet, USUAL_VOICE)).toBe(12);
    expect(takenRight(quiet, choice)).toBe(20);
    const loud = hearing({ phrases, talk: takes(4, false, refuseBelow - 1).map(({ fit }) => fit) });
    expect(chooseVoice([loud]).shift).toBe(0);
  });

  it("believes less where talk is taken, and loses no phrase by it", () => {
    const heard = hearing({ talk: [refuseBelow + 2] });
    const choice = chooseVoice([heard]);
    expect(choice.shift).toBe(2.5);
    expect(talkTaken(heard, USUAL_VOICE)).toBe(1);
    expect(talkTaken(heard, choice)).toBe(0);
  });

  it("never moves the limits far", () => {
    const phrases = takes(20, true, refuseBelow - 30);
    expect(Math.abs(chooseVoice([hearing({ phrases })]).shift)).toBeLessThanOrEqual(4);
  });
});
