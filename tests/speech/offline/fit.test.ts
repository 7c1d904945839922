import { describe, expect, it } from "vitest";
import type { PhraseDecoder } from "../../../src/speech/offline/decoder.ts";
import { type Decoders, finishBoth, USUAL_LIMITS } from "../../../src/speech/offline/fit.ts";

const scripted = (score: number, sentences = 1, text = "new net") =>
  ({
    finish: () => ({ text, score }),
    sentences: () => sentences,
  }) as unknown as PhraseDecoder;

const fitOf = (lead: number, frames: number, sentences = 1): number => {
  const decoders: Decoders = { phrases: scripted(lead, sentences), loop: scripted(0) };
  return finishBoth(decoders, frames).fit;
};

describe("how well a phrase fits", () => {
  it("is better the more its score is beyond that of loose sounds", () => {
    expect(fitOf(-500, 150)).toBeGreaterThan(fitOf(-900, 150));
  });

  it("lets a short phrase pay no more for its chances than a long one", () => {
    // As measured: "hook pulled" by the voice rms, said in 1.3 s, leads by -1495.
    expect(fitOf(-1495, 130)).toBeGreaterThan(USUAL_LIMITS.refuseBelow);
    // Talk of the same lead a frame, said in 4 s.
    expect(fitOf((-1495 * 400) / 130, 400)).toBeLessThan(fitOf(-1495, 130));
  });

  it("is asked to be better of several phrases in a row", () => {
    expect(fitOf(-1200, 130, 3)).toBeLessThan(USUAL_LIMITS.refuseBelow);
    expect(fitOf(-1200, 130, 1)).toBeGreaterThan(USUAL_LIMITS.refuseBelow);
  });
});
