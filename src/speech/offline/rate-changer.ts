/** Brings a stream of sound from one rate to another, whatever the two are. */

/** Zero crossings of the ideal filter on each side. */
const REACH = 16;
/** Of half the lower rate: what lies above is taken out. */
const CUTOFF = 0.95;

/** Band-limited by a sinc under a Hann window; `REACH` periods of the lower rate late. */
export class RateChanger {
  readonly #step: number;
  readonly #cutoff: number;
  readonly #reach: number;
  /** The sound still needed, and where the next sample lies in it. */
  #kept: Float32Array;
  #at: number;

  constructor(fromHz: number, toHz: number) {
    this.#step = fromHz / toHz;
    this.#cutoff = CUTOFF * Math.min(1, 1 / this.#step);
    this.#reach = REACH / this.#cutoff;
    this.#kept = new Float32Array(Math.ceil(this.#reach));
    this.#at = this.#kept.length;
  }

  /** @param sound any number of samples; what they complete comes back */
  process(sound: Float32Array): Float32Array {
    const all = new Float32Array(this.#kept.length + sound.length);
    all.set(this.#kept);
    all.set(sound, this.#kept.length);
    const changed: number[] = [];
    for (; this.#at + this.#reach < all.length; this.#at += this.#step)
      changed.push(this.#sample(all, this.#at));
    const done = Math.max(0, Math.ceil(this.#at - this.#reach));
    this.#kept = all.slice(done);
    this.#at -= done;
    return Float32Array.from(changed);
  }

  #sample(sound: Float32Array, centre: number): number {
    let sum = 0;
    const last = Math.floor(centre + this.#reach);
    for (let at = Math.ceil(centre - this.#reach); at <= last; at += 1) {
      const time = at - centre;
      const angle = Math.PI * this.#cutoff * time;
      const ideal = time === 0 ? this.#cutoff : (this.#cutoff * Math.sin(angle)) / angle;
      sum += (sound[at] ?? 0) * ideal * (0.5 + 0.5 * Math.cos((Math.PI * time) / this.#reach));
    }
    return sum;
  }
}
