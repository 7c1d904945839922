/** Takes wind, rain and hum out of speech: RNNoise (Valin 2018), as `@jitsi/rnnoise-wasm` builds it. */

export const SOUND_RATE_HZ = 48_000;
/** Samples of one frame: 10 ms. */
export const FRAME_SAMPLES = 480;

/** RNNoise takes samples on the scale of 16-bit numbers. */
const FULL_SCALE = 32_768;
const PAGE_BYTES = 65_536;

/** The names that the package's build gives to what it exports; a test holds them. */
interface Exports {
  /** Memory. */
  c: WebAssembly.Memory;
  /** Constructors. */
  d(): void;
  /** rnnoise_create */
  f(model: number): number;
  /** malloc */
  g(bytes: number): number;
  /** rnnoise_process_frame: the chance that the frame is speech */
  j(state: number, out: number, input: number): number;
}

export interface Frame {
  /** `FRAME_SAMPLES` samples from -1 to 1; valid until the next frame. */
  sound: Float32Array;
  /** 0 to 1. */
  speechChance: number;
}

export class Suppressor {
  readonly #exports: Exports;
  readonly #state: number;
  readonly #address: number;
  readonly #sound = new Float32Array(FRAME_SAMPLES);

  private constructor(exports: Exports) {
    exports.d();
    this.#exports = exports;
    this.#state = exports.f(0);
    this.#address = exports.g(FRAME_SAMPLES * Float32Array.BYTES_PER_ELEMENT);
  }

  /** @param wasm the bytes of the package's `rnnoise.wasm` */
  static async create(wasm: BufferSource): Promise<Suppressor> {
    let memory: WebAssembly.Memory | undefined;
    const bytes = () => new Uint8Array((memory as WebAssembly.Memory).buffer);
    const grow = (wanted: number) => {
      const missing = (wanted >>> 0) - bytes().length;
      memory?.grow(Math.ceil(missing / PAGE_BYTES));
      return 1;
    };
    const copy = (to: number, from: number, count: number) => {
      bytes().copyWithin(to, from, from + count);
    };
    const { instance } = await WebAssembly.instantiate(wasm, { a: { a: grow, b: copy } });
    const exports = instance.exports as unknown as Exports;
    memory = exports.c;
    return new Suppressor(exports);
  }

  /** @param frame `FRAME_SAMPLES` samples from -1 to 1 */
  process(frame: Float32Array): Frame {
    const shared = () => new Float32Array(this.#exports.c.buffer, this.#address, FRAME_SAMPLES);
    shared().set(frame.map((sample) => sample * FULL_SCALE));
    const speechChance = this.#exports.j(this.#state, this.#address, this.#address);
    const cleaned = shared();
    for (const [index, sample] of cleaned.entries()) this.#sound[index] = sample / FULL_SCALE;
    return { sound: this.#sound, speechChance };
  }
}
