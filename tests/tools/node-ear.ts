/** The ears of the app, put together in Node from the files of the packages. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import createModule from "soundswallower";
import { earsGrammar } from "../../grammar/fsg/ears.ts";
import { printFsg } from "../../grammar/fsg/fsg.ts";
import { PhraseDecoder } from "../../src/speech/offline/decoder.ts";
import {
  type DecoderModule,
  MODEL_PARTS,
  type ModelFiles,
} from "../../src/speech/offline/decoder-module.ts";
import { Ear, type Heard } from "../../src/speech/offline/ear.ts";
import { languageOf } from "../../src/speech/offline/ears-language.ts";
import { LOOP_DICTIONARY, phoneLoop } from "../../src/speech/offline/phone-loop.ts";
import type { Names } from "../../src/speech/offline/places.ts";
import { parseDictionary } from "../../src/speech/offline/pronounce.ts";
import { SOUND_RATE_HZ, Suppressor } from "../../src/speech/offline/suppressor.ts";
import { resample } from "./resample.ts";
import type { Sound } from "./wav.ts";

const require = createRequire(import.meta.url);
const MODEL = join(dirname(require.resolve("soundswallower")), "model/en-us");
const SUPPRESSOR = join(dirname(require.resolve("@jitsi/rnnoise-wasm")), "dist/rnnoise.wasm");

export interface NodeEar {
  /** Hears a whole sound, in pieces as a microphone gives them. */
  listen(sound: Sound): Heard[];
}

/** As much as an audio worklet gathers before it passes sound on: 30 ms. */
const PIECE_SAMPLES = 1440;
/** Silence after a file, so that its last words come to an end. */
const TAIL_SAMPLES = SOUND_RATE_HZ;

export async function createNodeEar(own: Names = {}): Promise<NodeEar> {
  const module = (await createModule()) as DecoderModule;
  const parts = MODEL_PARTS.map((part) => [part, readFileSync(join(MODEL, part))] as const);
  const words = parseDictionary(readFileSync(join(MODEL, "dict.txt"), "utf8"));
  const { fsg, dictionary } = languageOf(printFsg(earsGrammar()), words, own);
  const model = Object.fromEntries(parts) as unknown as ModelFiles;
  const suppressorWasm = readFileSync(SUPPRESSOR);
  const suppressor = await Suppressor.create(suppressorWasm);
  const decoders = {
    phrases: new PhraseDecoder({ module, model, dictionary, fsg }),
    loop: new PhraseDecoder({ module, model, dictionary: LOOP_DICTIONARY, fsg: phoneLoop() }),
  };
  return {
    listen({ samples, rateHz }) {
      const heard: Heard[] = [];
      const ear = new Ear(suppressor, decoders, {
        onInterim: () => {},
        onHeard: (utterance) => heard.push(utterance),
      });
      const sound = resample(samples, rateHz, SOUND_RATE_HZ);
      for (let at = 0; at < sound.length; at += PIECE_SAMPLES)
        ear.hear(sound.subarray(at, at + PIECE_SAMPLES));
      ear.hear(new Float32Array(TAIL_SAMPLES));
      ear.end();
      return heard;
    },
  };
}
