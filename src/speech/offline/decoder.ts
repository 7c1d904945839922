/** The grammar-bound decoder: sound in at the model's rate, words out. */
import type { Config, Decoder } from "soundswallower";
import type { DecoderModule, ModelFiles } from "./decoder-module.ts";

export const DECODER_RATE_HZ = 8000;

/** A word and one way of saying it, as phones of the model (ARPAbet without stress). */
export type Pronounced = readonly [word: string, phones: string];

export interface DecoderOptions {
  module: DecoderModule;
  model: ModelFiles;
  dictionary: readonly Pronounced[];
  /** The grammar as FSG text; every word of it must be in the dictionary. */
  fsg: string;
  config?: Config;
}

export interface Decoded {
  /** Empty where no path through the grammar reached an end. */
  text: string;
  /** Log score of the best path; only differences between decoders over the same sound mean anything. */
  score: number;
}

/** What stands in a path for a step without a word. */
const NO_WORD = "(NULL)";

/**
 * Wide enough that the right path is seldom lost: with narrower ones (1e-60, words 1e-40, 2000 sounds)
 * some phrases came to no end at all; with words at 1e-60 alone no fewer.
 */
const BEAMS: Config = { beam: 1e-80, pbeam: 1e-80, wbeam: 1e-60, maxhmmpf: 3000 };

export class PhraseDecoder {
  readonly #module: DecoderModule;
  readonly #decoder: Decoder & { cdecoder: number };
  /** Memory that the C side works in, and leaves to whoever handed it over. */
  readonly #handed: number[] = [];
  /** Where the C side writes the score. */
  readonly #scoreAddress: number;

  constructor(options: DecoderOptions) {
    const { module, model } = options;
    this.#module = module;
    this.#scoreAddress = module._malloc(4);
    const parameters = JSON.parse(new TextDecoder().decode(model["feat_params.json"]));
    this.#decoder = new module.Decoder({
      ...parameters,
      ...BEAMS,
      samprate: DECODER_RATE_HZ,
      loglevel: "FATAL",
      ...options.config,
    }) as Decoder & { cdecoder: number };
    this.#initialise(options);
  }

  start(): void {
    this.#decoder.start();
  }

  /** @param sound samples from -1 to 1 at `DECODER_RATE_HZ` */
  feed(sound: Float32Array): void {
    if (sound.length > 0) this.#decoder.process_audio(sound, false, false);
  }

  finish(): Decoded {
    this.#decoder.stop();
    return this.best();
  }

  /** After `finish`: how many sentences of the grammar the best path is a row of; each ends without a word. */
  sentences(): number {
    const { w: steps = [] } = this.#decoder.get_alignment();
    return steps.filter(({ t }) => t === NO_WORD).length;
  }

  /** The best path so far. */
  best(): Decoded {
    const address = this.#module._decoder_hyp(this.#decoder.cdecoder, this.#scoreAddress);
    const score = this.#module.HEAP32[this.#scoreAddress / 4] as number;
    return { text: address === 0 ? "" : this.#decoder.get_text(), score };
  }

  delete(): void {
    this.#decoder.delete();
    for (const address of [this.#scoreAddress, ...this.#handed]) this.#module._free(address);
  }

  /** The steps of the package's own `initialize`, from memory instead of from files. */
  #initialise({ module, model, dictionary, fsg }: DecoderOptions): void {
    const decoder = this.#decoder.cdecoder;
    const succeed = (done: number, what: string) => {
      if (done < 0) throw new Error(`The decoder refused ${what}.`);
    };
    const obtain = (made: number, what: string) => {
      if (made === 0) throw new Error(`The decoder could make nothing of ${what}.`);
      return made;
    };
    succeed(module._decoder_init_cleanup(decoder), "to begin");
    obtain(module._decoder_init_fe(decoder), "the sound's parameters");
    obtain(module._decoder_init_feat_s3file(decoder, 0), "the features' parameters");
    obtain(module._decoder_init_acmod_pre(decoder), "the model's parameters");
    const mdef = this.#file(model.mdef);
    module._set_mdef(decoder, obtain(module._bin_mdef_read_s3file(mdef, 0), "the phones"));
    module._s3file_free(mdef);
    const transitions = this.#file(model.transition_matrices);
    const floor = this.#decoder.get_config("tmatfloor") as number;
    const tmat = module._tmat_init_s3file(transitions, module._decoder_logmath(decoder), floor);
    module._set_tmat(decoder, obtain(tmat, "the transitions"));
    module._s3file_free(transitions);
    const [means, variances, sendump] = [model.means, model.variances, model.sendump].map((part) =>
      this.#file(part),
    ) as [number, number, number];
    succeed(module._load_gmm(decoder, means, variances, 0, sendump), "the model");
    succeed(module._decoder_init_acmod_post(decoder), "the model's scoring");
    const words = this.#file(encode(dictionaryText(dictionary)));
    const fillers = this.#file(model["noisedict.txt"]);
    obtain(module._decoder_init_dict_s3file(decoder, words, fillers), "the dictionary");
    succeed(
      module._decoder_init_grammar_s3file(decoder, this.#file(encode(fsg)), 0),
      "the grammar",
    );
    this.#decoder.initialized = true;
  }

  #file(bytes: Uint8Array): number {
    const address = this.#module._malloc(bytes.length + 1);
    this.#handed.push(address);
    this.#module.HEAPU8.set(bytes, address);
    this.#module.HEAPU8[address + bytes.length] = 0;
    return this.#module._s3file_init(address, bytes.length);
  }
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The package's format: a second way of saying "carp" stands under "carp(2)". */
function dictionaryText(dictionary: readonly Pronounced[]): string {
  const ways = new Map<string, number>();
  return dictionary
    .map(([word, phones]) => {
      const way = (ways.get(word) ?? 0) + 1;
      ways.set(word, way);
      return `${way === 1 ? word : `${word}(${way})`} ${phones}\n`;
    })
    .join("");
}
