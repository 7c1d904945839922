/** A WAV file (RIFF, Microsoft and IBM 1991) of 16-bit samples, one channel. */
const HEAD_BYTES = 44;
const PCM = 1;

/** @param sound samples from -1 to 1 */
export function toWav(sound: Float32Array, rateHz: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(HEAD_BYTES + 2 * sound.length);
  const view = new DataView(bytes.buffer);
  const put = (at: number, mark: string) => bytes.set(new TextEncoder().encode(mark), at);
  put(0, "RIFF");
  view.setUint32(4, bytes.length - 8, true);
  put(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, PCM, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rateHz, true);
  view.setUint32(28, 2 * rateHz, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  put(36, "data");
  view.setUint32(40, 2 * sound.length, true);
  for (const [index, sample] of sound.entries())
    view.setInt16(HEAD_BYTES + 2 * index, Math.max(-1, Math.min(1, sample)) * 32_767, true);
  return bytes;
}
