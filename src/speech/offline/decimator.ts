/** Lowers the rate of a stream of sound by a whole factor, without folding high tones down. */

/** Taps a step of the factor: a transition band of about a seventh of the new rate. */
const TAPS_A_STEP = 40;

export class Decimator {
  readonly #factor: number;
  readonly #taps: Float32Array;
  /** The sound that the next samples still need, oldest first. */
  #kept: Float32Array;

  constructor(factor: number) {
    this.#factor = factor;
    this.#taps = lowPass(factor * TAPS_A_STEP + 1, 0.92 / (2 * factor));
    this.#kept = new Float32Array(this.#taps.length - 1);
  }

  /** @param sound a multiple of the factor in length; the result is as many times shorter */
  process(sound: Float32Array): Float32Array {
    const all = new Float32Array(this.#kept.length + sound.length);
    all.set(this.#kept);
    all.set(sound, this.#kept.length);
    this.#kept = all.slice(sound.length);
    return Float32Array.from({ length: sound.length / this.#factor }, (_, index) =>
      this.#at(all, index * this.#factor),
    );
  }

  #at(sound: Float32Array, from: number): number {
    let sum = 0;
    for (let tap = 0; tap < this.#taps.length; tap += 1)
      sum += (this.#taps[tap] as number) * (sound[from + tap] as number);
    return sum;
  }
}

/**
 * A low-pass of linear phase: the ideal one under a Blackman window, of 1 at rest.
 * @param cutoff as a share of the rate
 */
export function lowPass(length: number, cutoff: number): Float32Array {
  const middle = (length - 1) / 2;
  const taps = Float32Array.from({ length }, (_, index) => {
    const angle = (2 * Math.PI * index) / (length - 1);
    const window = 0.42 - 0.5 * Math.cos(angle) + 0.08 * Math.cos(2 * angle);
    const time = index - middle;
    const ideal =
      time === 0 ? 2 * cutoff : Math.sin(2 * Math.PI * cutoff * time) / (Math.PI * time);
    return ideal * window;
  });
  const sum = taps.reduce((total, tap) => total + tap, 0);
  return taps.map((tap) => tap / sum);
}
