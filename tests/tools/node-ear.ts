/** The ears of the app, put together in Node from the files of the packages. */
import createModule from "soundswallower";
import { withAccent } from "../../src/speech/offline/accents.ts";
import { PhraseDecoder } from "../../src/speech/offline/decoder.ts";
import type { DecoderModule } from "../../src/speech/offline/decoder-module.ts";
import { type Decoders, Ear, type Heard } from "../../src/speech/offline/ear.ts";
import type { EarsFile } from "../../src/speech/offline/ears-files.ts";
import { languageOf } from "../../src/speech/offline/ears-language.ts";
import { withOwnWords } from "../../src/speech/offline/own-words.ts";
import { LOOP_DICTIONARY, phoneLoop } from "../../src/speech/offline/phone-loop.ts";
import type { Names } from "../../src/speech/offline/places.ts";
import { parseDictionary } from "../../src/speech/offline/pronounce.ts";
import { type Manner, USUAL_VOICE, warped } from "../../src/speech/offline/suit.ts";
import { FRAME_SAMPLES, SOUND_RATE_HZ, Suppressor } from "../../src/speech/offline/suppressor.ts";
import { earsPack } from "./build/ears-pack.ts";
import { resample } from "./resample.ts";
import type { Sound } from "./wav.ts";

export interface NodeHeard extends Heard {
  /** Processor time of the piece of sound that brought it: what it is later than its end. */
  lateMs: number;
}

export interface NodeEar {
  /**
   * Lets the suppressor learn the noise of a sound before it is heard: a recording begins in the
   * middle of it, where a microphone has been open for a while.
   */
  warm(sound: Sound): void;
  /** Hears a whole sound, in pieces as a microphone gives them. */
  listen(sound: Sound): NodeHeard[];
  /** An ear at a microphone that stays open, to be given sound at `SOUND_RATE_HZ` as it comes. */
  open(onHeard: (heard: Heard) => void): Ear;
}

/** As much as an audio worklet gathers before it passes sound on: 30 ms. */
export const PIECE_SAMPLES = 1440;
/** After so much of it the noise is known; a single second of it was no help. */
const WARM_SECONDS = 5;
/** Silence after a file, so that its last words come to an end. */
const TAIL_SAMPLES = SOUND_RATE_HZ;

/** Decoders for voices heard in one manner. */
export async function createNodeDecoders(
  own: Names = {},
  pack = earsPack(),
  manner: Manner = USUAL_VOICE,
): Promise<Decoders> {
  const module = (await createModule()) as DecoderModule;
  const text = (file: EarsFile) => new TextDecoder().decode(pack[file]);
  const known = parseDictionary(text("words.txt"));
  const words = await withOwnWords(known, own, async () => text("dictionary.txt"));
  const { fsg, dictionary } = languageOf(
    text("grammar.fsg"),
    withAccent(words, manner.accent),
    own,
  );
  const common = { module, model: pack, config: warped(manner) };
  return {
    phrases: new PhraseDecoder({ ...common, dictionary, fsg }),
    loop: new PhraseDecoder({ ...common, dictionary: LOOP_DICTIONARY, fsg: phoneLoop() }),
  };
}

/** @param pack the files that the build ships, or others in their place */
export async function createNodeEar(
  own: Names = {},
  pack = earsPack(),
  manner: Manner = USUAL_VOICE,
): Promise<NodeEar> {
  const decoders = await createNodeDecoders(own, pack, manner);
  const suppressor = await Suppressor.create(new Uint8Array(pack["suppressor.wasm"]));
  const open = (onHeard: (heard: Heard) => void) =>
    new Ear(suppressor, decoders, { onInterim: () => {}, onHeard });
  return {
    open,
    warm({ samples, rateHz }) {
      const start = samples.subarray(0, rateHz * WARM_SECONDS);
      const sound = resample(start, rateHz, SOUND_RATE_HZ);
      for (let at = 0; at + FRAME_SAMPLES <= sound.length; at += FRAME_SAMPLES)
        suppressor.process(sound.subarray(at, at + FRAME_SAMPLES));
    },
    listen({ samples, rateHz }) {
      const heard: NodeHeard[] = [];
      let before = process.cpuUsage();
      const ear = open((utterance) => {
        const { user, system } = process.cpuUsage(before);
        heard.push({ ...utterance, lateMs: (user + system) / 1000 });
      });
      const sound = resample(samples, rateHz, SOUND_RATE_HZ);
      const whole = new Float32Array(sound.length + TAIL_SAMPLES);
      whole.set(sound);
      for (let at = 0; at < whole.length; at += PIECE_SAMPLES) {
        before = process.cpuUsage();
        ear.hear(whole.subarray(at, at + PIECE_SAMPLES));
      }
      ear.end();
      return heard;
    },
  };
}
