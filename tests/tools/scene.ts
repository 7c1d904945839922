/** Sound to try the ears with: synthetic speech of human-derived voices, and weather. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Random } from "../../grammar/jsgf/sample.ts";
import { SOUND_RATE_HZ } from "../../src/speech/offline/suppressor.ts";
import { resample } from "./resample.ts";
import { readWav } from "./wav.ts";

/** The voices of Debian's `flite` that were cut from recordings of people. */
export const VOICES = ["rms", "slt", "awb", "kal16"] as const;
export type VoiceName = (typeof VOICES)[number];

/** A British voice and an American one, of Debian's `libttspico-utils` (non-free); cut from people too. */
export const OTHER_VOICES = ["en-GB", "en-US"] as const;
export type OtherVoice = (typeof OTHER_VOICES)[number];

const isOther = (voice: VoiceName | OtherVoice): voice is OtherVoice =>
  (OTHER_VOICES as readonly string[]).includes(voice);

/** One sentence at `SOUND_RATE_HZ`. @param stretch 1 as recorded, more is slower */
export function speak(sentence: string, voice: VoiceName | OtherVoice, stretch = 1): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    const file = join(folder, "said.wav");
    // The voices spell out "F 1"; "f1" they would read as a word.
    const text = sentence.replace(/\bf1(s?)\b/gi, (_, many) => (many ? "F ones" : "F 1"));
    if (isOther(voice)) execFileSync("pico2wave", ["-l", voice, "-w", file, text]);
    else {
      const slow = ["--setf", `duration_stretch=${stretch}`];
      execFileSync("flite", ["-voice", voice, ...slow, "-t", text, "-o", file]);
    }
    const { samples, rateHz } = readWav(file);
    return resample(samples, rateHz, SOUND_RATE_HZ);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export type Weather = "wind" | "pink";

/** Speech with a little before and after it, under weather. @param snrDb broadband, over the speech */
export function under(
  speech: Float32Array,
  weather: Weather | undefined,
  snrDb: number,
  random: Random,
): Float32Array {
  const margin = (SOUND_RATE_HZ * 3) / 4;
  const scene = new Float32Array(speech.length + 2 * margin);
  scene.set(speech, margin);
  if (!weather) return scene;
  const noise = (weather === "wind" ? wind : pink)(scene.length, random);
  const gain = level(speech) / level(noise) / 10 ** (snrDb / 20);
  return scene.map((sample, index) => sample + gain * (noise[index] as number));
}

const level = (sound: Float32Array): number =>
  Math.sqrt(sound.reduce((sum, sample) => sum + sample * sample, 0) / sound.length);

/**
 * Wind at a microphone: rumble that falls with frequency (a leaky sum of white noise, knee at 15 Hz)
 * in gusts of two or three seconds. A sketch of it, from memory.
 */
export function wind(length: number, random: Random): Float32Array {
  const [slow, quick] = [random() * 6, random() * 6];
  let rumble = 0;
  return Float32Array.from({ length }, (_, index) => {
    rumble = 0.998 * rumble + (random() * 2 - 1);
    const seconds = index / SOUND_RATE_HZ;
    const gust =
      0.55 + 0.45 * Math.sin(2.2 * seconds + slow) + 0.3 * Math.sin(8.2 * seconds + quick);
    return rumble * Math.max(0.05, gust);
  });
}

/** Equal power in every octave: white noises, each held twice as long as the one before (Voss). */
function pink(length: number, random: Random): Float32Array {
  const rows = new Float32Array(14);
  return Float32Array.from({ length }, (_, index) => {
    for (const row of rows.keys()) if (index % 2 ** row === 0) rows[row] = random() * 2 - 1;
    return rows.reduce((sum, value) => sum + value, 0);
  });
}
