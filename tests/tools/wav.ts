/** WAV files (RIFF, Microsoft and IBM 1991): 16-bit PCM or 32-bit float, mixed down to one channel. */
import { readFileSync } from "node:fs";

export interface Sound {
  rateHz: number;
  /** From -1 to 1. */
  samples: Float32Array;
}

const PCM = 1;
const FLOAT = 3;
/** The real format then stands further on, in the first two bytes of an identifier. */
const EXTENSIBLE = 0xfffe;
const EXTENSIBLE_FORMAT_AT = 24;

/** Throws for a file that is no WAV file, or holds another kind of samples. */
export function readWav(path: string): Sound {
  const bytes = readFileSync(path);
  if (bytes.toString("latin1", 0, 4) !== "RIFF") throw new Error(`${path} is no WAV file.`);
  const chunks = new Map(chunksOf(bytes));
  const [format, data] = [chunks.get("fmt "), chunks.get("data")];
  if (!format || !data) throw new Error(`${path} lacks its format or its sound.`);
  const tag = format.readUInt16LE(0);
  const kind = tag === EXTENSIBLE ? format.readUInt16LE(EXTENSIBLE_FORMAT_AT) : tag;
  const bits = format.readUInt16LE(14);
  const read = readerOf(kind, bits);
  if (!read) throw new Error(`${path} is neither 16-bit PCM nor 32-bit float.`);
  const channels = format.readUInt16LE(2);
  const step = bits / 8;
  const length = Math.floor(data.length / step / channels);
  const samples = Float32Array.from({ length }, (_, index) => {
    let sum = 0;
    for (let channel = 0; channel < channels; channel += 1)
      sum += read(data, (index * channels + channel) * step);
    return sum / channels;
  });
  return { rateHz: format.readUInt32LE(4), samples };
}

/** Files written to a pipe claim more than there is, so lengths are cut to what is there. */
function* chunksOf(bytes: Buffer): Generator<[string, Buffer]> {
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = bytes.readUInt32LE(at + 4);
    yield [bytes.toString("latin1", at, at + 4), bytes.subarray(at + 8, at + 8 + length)];
    at += 8 + length + (length % 2);
  }
}

function readerOf(kind: number, bits: number): ((data: Buffer, at: number) => number) | undefined {
  if (kind === PCM && bits === 16) return (data, at) => data.readInt16LE(at) / 32_768;
  if (kind === FLOAT && bits === 32) return (data, at) => data.readFloatLE(at);
  return undefined;
}
