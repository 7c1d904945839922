/** Whistles, hooters and the beeps of machines, which a decoder bends into short phrases. */
import { DECODER_RATE_HZ } from "./decoder.ts";

const FRAME_SAMPLES = DECODER_RATE_HZ / 40;
/** Of the loudest frame's level: softer ones say nothing of a tone. */
const LOUD = 0.3;
/** In frames: a single short vowel is as steady as a tone. */
const LEAST_LOUD = 8;
/** Of 78 utterances of synthetic speech the steadiest came to 0.86, of 40 whistles the least to 0.98. */
const STEADY = 0.93;

/**
 * Whether nearly all loud frames cross zero as often as the middle one, within a twenty-fifth: those
 * of speech don't for long.
 *
 * @param sound samples from -1 to 1 at `DECODER_RATE_HZ`
 */
export function isSteadyTone(sound: Float32Array): boolean {
  const frames = framesOf(sound);
  const loudest = frames.reduce((most, { level }) => Math.max(most, level), 0);
  const loud = frames.filter(({ level }) => level > LOUD * loudest);
  if (loud.length < LEAST_LOUD) return false;
  const crossings = loud.map((frame) => frame.crossings).sort((a, b) => a - b);
  const middle = crossings[crossings.length >> 1] as number;
  const margin = Math.max(1, middle / 25);
  const alike = crossings.filter((count) => Math.abs(count - middle) <= margin);
  return alike.length >= STEADY * crossings.length;
}

/** Of 25 ms each the root mean square, and how often it crosses zero. */
function framesOf(sound: Float32Array): { level: number; crossings: number }[] {
  return Array.from({ length: Math.floor(sound.length / FRAME_SAMPLES) }, (_, frame) => {
    const part = sound.subarray(frame * FRAME_SAMPLES, (frame + 1) * FRAME_SAMPLES);
    let [sum, crossings] = [0, 0];
    part.forEach((sample, i) => {
      sum += sample * sample;
      if (i > 0 && sample < 0 !== (part[i - 1] as number) < 0) crossings += 1;
    });
    return { level: Math.sqrt(sum / FRAME_SAMPLES), crossings };
  });
}
