/** Gathers the microphone's sound into pieces of 30 ms or so and passes them on. */
import type { Piece } from "./worker-messages.ts";

/** The scope of an audio worklet, which the DOM's types leave out. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: typeof AudioWorkletProcessor): void;

const PIECE_SAMPLES = 1440;

class Gatherer extends AudioWorkletProcessor {
  #piece = new Float32Array(PIECE_SAMPLES);
  #filled = 0;
  /** The worker's end, once the page has handed it over. */
  #to: MessagePort | undefined;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.#to = data;
    };
  }

  process([input]: Float32Array[][]): boolean {
    for (const sample of input?.[0] ?? []) {
      this.#piece[this.#filled] = sample;
      this.#filled += 1;
      if (this.#filled === PIECE_SAMPLES) this.#pass();
    }
    return true;
  }

  #pass(): void {
    const piece: Piece = { samples: this.#piece, at: Date.now() };
    this.#to?.postMessage(piece, [piece.samples.buffer]);
    this.#piece = new Float32Array(PIECE_SAMPLES);
    this.#filled = 0;
  }
}

registerProcessor("gatherer", Gatherer);
