/** A recording for the browser to play as its microphone: phrases, with gusts of wind between them. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Random, seededRandom } from "../../grammar/jsgf/sample.ts";
import { SOUND_RATE_HZ } from "../../src/speech/offline/suppressor.ts";
import { resample } from "../tools/resample.ts";
import { wind } from "../tools/scene.ts";
import { readWav } from "../tools/wav.ts";

/**
 * Speech by the voices `slt`, `rms` and `awb` of Debian's `flite` 2.2, brought to 8 kHz; each file
 * is named by what it says.
 */
const FOLDER = "tests/browser/said-in-a-session";

/** What is said in it. Nothing that is answered by voice: while the phone speaks, its microphone is closed. */
export const SESSION = [
  "start the session",
  "rig two",
  "depth half a metre",
  "carp four pounds",
  "make that five pounds",
  "lost one at the net",
  "f1 two pounds eight",
  "new net",
  "three small roach",
  "skimmer ten ounces",
  "scratch that",
  "brass carp two pounds",
  "all out",
];

const LEAD_SECONDS = 1;
const QUIET_SECONDS = 0.8;
/** A gust as strong as speech. */
const GUST_SECONDS = 1;
const GUST_PEAK = 0.3;

export const saidInASession = (phrase: string): Float32Array => {
  const { samples, rateHz } = readWav(join(FOLDER, `${phrase.replaceAll(" ", "-")}.wav`));
  return resample(samples, rateHz, SOUND_RATE_HZ);
};

/** One after the other at `SOUND_RATE_HZ`, after a second of quiet, with a gust between each two. */
export function spoken(phrases: readonly Float32Array[], seed = 1): Float32Array {
  const random = seededRandom(seed);
  const quiet = silence(QUIET_SECONDS);
  const parts = phrases.flatMap((phrase) => [phrase, quiet, gust(random), quiet]);
  return joined([silence(LEAD_SECONDS), ...parts]);
}

/** 16-bit PCM, one channel. */
export function writeWav(path: string, sound: Float32Array): void {
  const head = Buffer.alloc(44);
  const bytes = 2 * sound.length;
  head.write("RIFF", 0);
  head.writeUInt32LE(36 + bytes, 4);
  head.write("WAVEfmt ", 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(SOUND_RATE_HZ, 24);
  head.writeUInt32LE(2 * SOUND_RATE_HZ, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write("data", 36);
  head.writeUInt32LE(bytes, 40);
  const samples = Int16Array.from(sound, (sample) => 32_767 * Math.max(-1, Math.min(1, sample)));
  writeFileSync(path, Buffer.concat([head, Buffer.from(samples.buffer)]));
}

/** The switches with which Chromium takes a recording for its microphone, once and then silence. */
export const microphoneArgs = (path: string): string[] => [
  "--use-fake-device-for-media-stream",
  "--use-fake-ui-for-media-stream",
  `--use-file-for-fake-audio-capture=${path}%noloop`,
];

export const silence = (seconds: number) => new Float32Array(seconds * SOUND_RATE_HZ);

/** Wind that swells and dies down. */
function gust(random: Random): Float32Array {
  const sound = wind(GUST_SECONDS * SOUND_RATE_HZ, random);
  const peak = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return sound.map(
    (sample, index) =>
      (GUST_PEAK / peak) * sample * Math.sin((Math.PI * index) / sound.length) ** 2,
  );
}

export function joined(parts: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
