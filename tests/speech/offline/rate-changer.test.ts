import { expect, it } from "vitest";
import { RateChanger } from "../../../src/speech/offline/rate-changer.ts";

const RATES = [16_000, 44_100, 96_000] as const;
const TO_HZ = 48_000;

const tone = (hz: number, rateHz: number, seconds = 0.5) =>
  Float32Array.from({ length: rateHz * seconds }, (_, i) =>
    Math.sin((2 * Math.PI * hz * i) / rateHz),
  );

/** In pieces of a length that fits nothing. */
function changed(sound: Float32Array, fromHz: number): Float32Array {
  const changer = new RateChanger(fromHz, TO_HZ);
  const parts: number[] = [];
  for (let at = 0; at < sound.length; at += 1_009)
    parts.push(...changer.process(sound.subarray(at, at + 1_009)));
  return Float32Array.from(parts);
}

/** Root mean square, its ends left out. */
const strength = (sound: Float32Array) => {
  const middle = sound.subarray(4_000, -4_000);
  return Math.sqrt(middle.reduce((sum, sample) => sum + sample ** 2, 0) / middle.length);
};

it.each(RATES)("a tone at %i Hz keeps its height, its strength and its place", (rateHz) => {
  const wanted = tone(1_000, TO_HZ);
  const made = changed(tone(1_000, rateHz), rateHz);
  expect(made.length).toBeGreaterThan(wanted.length - 100);
  for (let at = 4_000; at < made.length - 4_000; at += 1)
    expect(Math.abs((made[at] as number) - (wanted[at] as number))).toBeLessThan(0.01);
});

it("what the new rate cannot hold is taken out, not folded down", () => {
  expect(strength(changed(tone(30_000, 96_000), 96_000))).toBeLessThan(0.01);
  expect(strength(changed(tone(10_000, 96_000), 96_000))).toBeCloseTo(Math.SQRT1_2, 2);
});
