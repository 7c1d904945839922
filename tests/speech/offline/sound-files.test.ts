import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fromMuLaw, toMuLaw } from "../../../src/speech/offline/mu-law.ts";
import { toWav } from "../../../src/speech/offline/wav.ts";
import { readWav } from "../../tools/wav.ts";

const tone = Float32Array.from({ length: 8000 }, (_, i) => Math.sin(i / 5) * (i / 8000));

describe("speech in a byte a sample", () => {
  it("takes 8,000 bytes a second", () => {
    expect(toMuLaw(tone).length).toBe(8000);
  });

  it("comes back within a sixteenth of its height", () => {
    for (const [index, sample] of fromMuLaw(toMuLaw(tone)).entries()) {
      const said = tone[index] as number;
      expect(Math.abs(sample - said)).toBeLessThan(Math.abs(said) / 16 + 1 / 4096);
    }
  });

  // Silence and the largest sizes, as ITU-T G.711 (mu-law) codes them.
  it.each([
    [0, 0xff],
    [1, 0x80],
    [-1, 0x00],
  ])("%s is coded as the standard has it", (sample, code) => {
    expect([...toMuLaw(Float32Array.of(sample))]).toEqual([code]);
  });
});

describe("a WAV file", () => {
  it("is read as written, by the reader of the tools", () => {
    const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
    try {
      const path = join(folder, "said.wav");
      writeFileSync(path, toWav(tone, 8000));
      const { samples, rateHz } = readWav(path);
      expect(rateHz).toBe(8000);
      expect(samples.length).toBe(tone.length);
      for (const [index, sample] of samples.entries())
        expect(sample).toBeCloseTo(tone[index] as number, 3);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
