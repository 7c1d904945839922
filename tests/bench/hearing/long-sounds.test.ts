import { expect, test } from "vitest";
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { gusts, hiss, type Source } from "./long-sounds.ts";

const SECOND_SAMPLES = 48_000;
const SECONDS = 300;

const meanSquare = (sound: Float32Array): number =>
  sound.reduce((sum, sample) => sum + sample * sample, 0) / sound.length;

/** How loud each fifth of a second is, as mean squares, made in pieces as the bench does. */
function loudness(source: Source): number[] {
  const piece = new Float32Array(SECOND_SAMPLES / 5);
  return Array.from({ length: 5 * SECONDS }, () => {
    source(piece);
    return meanSquare(piece);
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** How alike a row is to itself so many places later: 1 where it repeats itself. */
function likeness(values: readonly number[], later: number): number {
  const middle = mean(values);
  const apart = values.map((value) => value - middle);
  const both = apart.slice(later).map((value, place) => value * (apart[place] ?? 0));
  return mean(both) / mean(apart.map((value) => value ** 2));
}

test("hiss is as loud as it is asked to be", () => {
  expect(Math.sqrt(mean(loudness(hiss(1e-3, seededRandom(1)))))).toBeCloseTo(1e-3, 5);
});

test("wind comes near the level it is asked for, and never comes again as it was", () => {
  const gusty = loudness(gusts(0.05, seededRandom(1)));
  expect(Math.abs(Math.sqrt(mean(gusty)) / 0.05 - 1)).toBeLessThan(0.2);
  const later = Array.from({ length: 5 * 60 }, (_, place) => 50 + place);
  expect(Math.max(...later.map((places) => likeness(gusty, places)))).toBeLessThan(0.5);
});
