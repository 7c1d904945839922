/** Hearing one whole utterance that was kept. */
import { DECODER_RATE_HZ } from "./decoder.ts";
import { type Decoders, finishBoth } from "./fit.ts";
import type { Tried } from "./worker-messages.ts";

const FRAME_SAMPLES = DECODER_RATE_HZ / 100;

/** @param sound samples from -1 to 1 at `DECODER_RATE_HZ`, as an ear told them */
export function judge({ phrases, loop }: Decoders, sound: Float32Array): Tried {
  for (const decoder of [phrases, loop]) {
    decoder.start();
    decoder.feed(sound);
  }
  return finishBoth({ phrases, loop }, sound.length / FRAME_SAMPLES);
}
