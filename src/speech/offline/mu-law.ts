/**
 * Speech in a byte a sample (mu-law, ITU-T G.711): 8,000 bytes a second at the decoder's rate. Every
 * browser could play it, but is handed samples.
 */

const BIAS = 0x84;
const CLIP = 32_635;
const FULL_SCALE = 32_768;

/** @param sound samples from -1 to 1 */
export const toMuLaw = (sound: Float32Array): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(sound, (sample) => encode(Math.round(sample * FULL_SCALE)));

export const fromMuLaw = (bytes: Uint8Array): Float32Array<ArrayBuffer> =>
  Float32Array.from(bytes, (byte) => decode(byte) / FULL_SCALE);

function encode(sample: number): number {
  const sign = sample < 0 ? 0x80 : 0;
  const size = Math.min(Math.abs(sample), CLIP) + BIAS;
  const segment = 31 - Math.clz32(size) - 7;
  return ~(sign | (segment << 4) | ((size >> (segment + 3)) & 0x0f)) & 0xff;
}

function decode(byte: number): number {
  const bits = ~byte & 0xff;
  const segment = (bits >> 4) & 7;
  const size = ((((bits & 0x0f) << 3) + BIAS) << segment) - BIAS;
  return bits & 0x80 ? -size : size;
}
