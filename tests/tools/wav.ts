/** WAV files (RIFF, Microsoft and IBM 1991): whole or floating samples, mixed down to one channel. */
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
const FORMAT_BYTES = 16;
/** Telephones give the lowest, sound cards the highest. */
const [LEAST_RATE_HZ, MOST_RATE_HZ] = [4000, 384_000];

/** Throws, naming the file, where it is missing, is no WAV file or holds another kind of samples. */
export function readWav(path: string): Sound {
  const refuse = (why: string) => new Error(`${path} ${why}.`);
  const bytes = bytesOf(path);
  if (!bytes) throw refuse("can't be read");
  if (bytes.toString("latin1", 0, 4) !== "RIFF" || bytes.toString("latin1", 8, 12) !== "WAVE")
    throw refuse("is no WAV file");
  const chunks = new Map(chunksOf(bytes));
  const [format, data] = [chunks.get("fmt "), chunks.get("data")];
  if (!format || format.length < FORMAT_BYTES || !data)
    throw refuse("lacks its format or its sound");
  const [channels, rateHz, bits] = [2, 4, 14].map((at) =>
    at === 4 ? format.readUInt32LE(at) : format.readUInt16LE(at),
  ) as [number, number, number];
  if (channels === 0 || rateHz < LEAST_RATE_HZ || rateHz > MOST_RATE_HZ)
    throw refuse(`claims ${channels} channels at ${rateHz} Hz`);
  const read = readerOf(kindOf(format), bits);
  if (!read) throw refuse("holds neither whole samples of 8, 16, 24 or 32 bits nor floating ones");
  const step = bits / 8;
  const length = Math.floor(data.length / step / channels);
  const samples = Float32Array.from({ length }, (_, index) => {
    let sum = 0;
    for (let channel = 0; channel < channels; channel += 1)
      sum += read(data, (index * channels + channel) * step);
    return sum / channels;
  });
  return { rateHz, samples };
}

function bytesOf(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}

function kindOf(format: Buffer): number {
  const tag = format.readUInt16LE(0);
  const isLong = format.length >= EXTENSIBLE_FORMAT_AT + 2;
  return tag === EXTENSIBLE && isLong ? format.readUInt16LE(EXTENSIBLE_FORMAT_AT) : tag;
}

/** Files written to a pipe claim more than there is, so lengths are cut to what is there. */
function* chunksOf(bytes: Buffer): Generator<[string, Buffer]> {
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = bytes.readUInt32LE(at + 4);
    yield [bytes.toString("latin1", at, at + 4), bytes.subarray(at + 8, at + 8 + length)];
    at += 8 + length + (length % 2);
  }
}

type Read = (data: Buffer, at: number) => number;

/** By kind and bits: one sample, from -1 to 1. Samples of 8 bits have no sign. */
const READERS: Readonly<Record<string, Read>> = {
  [`${PCM} 8`]: (data, at) => (data.readUInt8(at) - 128) / 128,
  [`${PCM} 16`]: (data, at) => data.readInt16LE(at) / 2 ** 15,
  [`${PCM} 24`]: (data, at) => data.readIntLE(at, 3) / 2 ** 23,
  [`${PCM} 32`]: (data, at) => data.readInt32LE(at) / 2 ** 31,
  [`${FLOAT} 32`]: (data, at) => data.readFloatLE(at),
  [`${FLOAT} 64`]: (data, at) => data.readDoubleLE(at),
};

const readerOf = (kind: number, bits: number): Read | undefined => READERS[`${kind} ${bits}`];
