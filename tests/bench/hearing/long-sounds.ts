/** Sound in which nobody speaks, as long as one likes: made piece by piece, so that none of it is kept. */
import type { Random } from "../../../grammar/jsgf/sample.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";

/** Fills the next piece with samples from -1 to 1 at `SOUND_RATE_HZ`. */
export type Source = (piece: Float32Array) => void;

export const nothing = (): Source => (piece) => {
  piece.fill(0);
};

/** A microphone's own noise. @param level root mean square, full scale 1 */
export function hiss(level: number, random: Random): Source {
  const noise = evenNoise(random);
  return (piece) => {
    for (let at = 0; at < piece.length; at += 1) piece[at] = level * noise();
  };
}

/** The rumble of wind falls with frequency from a knee at 15 Hz: a leaky sum of white noise. */
const LEAK = 0.998;
/** The speed of wind wanders about its mean at these paces at once, by so much in all. */
const PACES_SECONDS = [0.3, 3, 40];
const SPREAD = 0.4;
/** The speed is followed in steps of so many samples: 10 ms. */
const STEP_SAMPLES = SOUND_RATE_HZ / 100;

/**
 * Wind at a microphone, in gusts and lulls that never come again; its pressure goes with the square of
 * its speed. What is above full scale is cut off, as a microphone does. A sketch of wind, from memory.
 * @param level root mean square over a long time, full scale 1
 */
export function gusts(level: number, random: Random): Source {
  const [noise, speed] = [evenNoise(random), windSpeed(random)];
  // The mean fourth power of a speed of mean 1 that is spread like a bell.
  const usual = Math.sqrt(1 + 6 * SPREAD ** 2 + 3 * SPREAD ** 4);
  const scale = (level * Math.sqrt(1 - LEAK ** 2)) / usual;
  let rumble = 0;
  let [from, to] = [speed() ** 2, speed() ** 2];
  let step = 0;
  return (piece) => {
    for (let at = 0; at < piece.length; at += 1) {
      if (step === STEP_SAMPLES) {
        [from, to] = [to, speed() ** 2];
        step = 0;
      }
      const pressure = from + ((to - from) * step) / STEP_SAMPLES;
      rumble = LEAK * rumble + noise();
      piece[at] = Math.max(-1, Math.min(1, scale * pressure * rumble));
      step += 1;
    }
  };
}

/** The wind's speed at each step, its mean 1; never below 0. */
function windSpeed(random: Random): () => number {
  const noise = evenNoise(random);
  const stepSeconds = STEP_SAMPLES / SOUND_RATE_HZ;
  const wanderings = PACES_SECONDS.map((pace) => ({ keeps: Math.exp(-stepSeconds / pace), at: 0 }));
  return () => {
    let all = 0;
    for (const wandering of wanderings) {
      const { keeps } = wandering;
      wandering.at = keeps * wandering.at + Math.sqrt(1 - keeps ** 2) * noise();
      all += wandering.at;
    }
    return Math.max(0, 1 + (SPREAD * all) / Math.sqrt(wanderings.length));
  };
}

/** White noise of root mean square 1. */
const evenNoise = (random: Random) => () => Math.sqrt(3) * (random() * 2 - 1);
