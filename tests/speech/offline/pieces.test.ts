import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { Decimator } from "../../../src/speech/offline/decimator.ts";
import { END_SILENCE_FRAMES, SpeechDetector } from "../../../src/speech/offline/speech-detector.ts";
import {
  FRAME_SAMPLES,
  SOUND_RATE_HZ,
  Suppressor,
} from "../../../src/speech/offline/suppressor.ts";

const tone = (hz: number, length: number, rateHz: number) =>
  Float32Array.from({ length }, (_, index) => Math.sin((2 * Math.PI * hz * index) / rateHz) / 2);
const level = (sound: Float32Array) =>
  Math.sqrt(sound.reduce((sum, sample) => sum + sample ** 2, 0) / sound.length);

describe("lowering the rate", () => {
  const lowered = (hz: number) => new Decimator(6).process(tone(hz, 48_000, 48_000)).subarray(100);

  it("keeps the tones of speech", () => {
    for (const hz of [200, 1000, 3000]) expect(level(lowered(hz))).toBeCloseTo(0.5 / Math.SQRT2, 2);
  });

  it("folds none down from above half the new rate", () => {
    for (const hz of [4600, 7000, 15_000]) expect(level(lowered(hz))).toBeLessThan(0.001);
  });

  it("gives the same in pieces as at once", () => {
    const sound = tone(700, 4800, 48_000);
    const [whole, pieces] = [new Decimator(6), new Decimator(6)];
    const joined = Array.from({ length: 10 }, (_, i) => [
      ...pieces.process(sound.subarray(i * 480, (i + 1) * 480)),
    ]).flat();
    expect(joined).toEqual([...whole.process(sound)]);
  });
});

describe("the speech detector", () => {
  const turns = (chances: readonly number[]) => {
    const detector = new SpeechDetector();
    return chances.flatMap((chance) => detector.next(chance) ?? []).map(String);
  };
  const many = (length: number, chance: number) => Array.from({ length }, () => chance);

  it("takes a click for nothing", () => {
    expect(turns([...many(3, 1), ...many(100, 0)])).toEqual([]);
  });

  it("bridges a breath between two words", () => {
    const breath = many(END_SILENCE_FRAMES - 1, 0);
    const said = [...many(20, 1), ...breath, ...many(20, 1), ...many(END_SILENCE_FRAMES, 0)];
    expect(turns(said)).toEqual(["begins", "ends"]);
  });
});

describe("the suppressor", () => {
  const require = createRequire(import.meta.url);
  const wasm = readFileSync(
    join(dirname(require.resolve("@jitsi/rnnoise-wasm")), "dist/rnnoise.wasm"),
  );

  it("takes the rumble of wind down by half and more, and mostly holds it for no speech", async () => {
    const suppressor = await Suppressor.create(wasm);
    const random = seededRandom(1);
    let rumble = 0;
    let [before, after, chance] = [0, 0, 0];
    for (let frame = 0; frame < 300; frame += 1) {
      const noise = Float32Array.from({ length: FRAME_SAMPLES }, () => {
        rumble = 0.998 * rumble + (random() - 0.5) / 50;
        return rumble;
      });
      const { sound, speechChance } = suppressor.process(noise);
      if (frame < 200) continue;
      before += level(noise);
      after += level(sound);
      chance += speechChance / 100;
    }
    expect(after).toBeLessThan(before / 2);
    expect(chance).toBeLessThan(0.5);
    expect(FRAME_SAMPLES / SOUND_RATE_HZ).toBe(0.01);
  });
});
