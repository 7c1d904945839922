/**
 * Recordings of people in Debian's `pocketsphinx-testdata`: playing cards read out, a novel, and
 * commands to a robot. None of it is for the log, however many numbers it holds.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readWav, type Sound } from "../wav.ts";

const FOLDER = "/usr/share/pocketsphinx/test/data";
/** The raw files hold 16-bit samples at this rate. */
const RAW_RATE_HZ = 16_000;

export interface Recording {
  file: string;
  sound: Sound;
}

/** None where the package is not installed. */
export function recordings(): Recording[] {
  if (!existsSync(FOLDER)) return [];
  const wavs = ["cards", "librivox"].flatMap((folder) =>
    readdirSync(join(FOLDER, folder))
      .filter((file) => file.endsWith(".wav"))
      .map((file) => join(folder, file)),
  );
  const raws = ["goforward.raw", "numbers.raw", "something.raw"];
  return [
    ...wavs.map((file) => ({ file, sound: readWav(join(FOLDER, file)) })),
    ...raws.map((file) => ({ file, sound: readRaw(join(FOLDER, file)) })),
  ];
}

function readRaw(path: string): Sound {
  const bytes = readFileSync(path);
  const samples = Float32Array.from(
    { length: Math.floor(bytes.length / 2) },
    (_, index) => bytes.readInt16LE(index * 2) / 32_768,
  );
  return { rateHz: RAW_RATE_HZ, samples };
}
