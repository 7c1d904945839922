/** The ear at work, away from the page. */
import createModule from "soundswallower";
import { PhraseDecoder } from "./decoder.ts";
import { type DecoderModule, MODEL_PARTS, type ModelFiles } from "./decoder-module.ts";
import { type Decoders, Ear } from "./ear.ts";
import { EarsFiles } from "./ears-files.ts";
import { languageOf } from "./ears-language.ts";
import { confidenceOf, USUAL_LIMITS } from "./fit.ts";
import { withOwnWords } from "./own-words.ts";
import { LOOP_DICTIONARY, phoneLoop } from "./phone-loop.ts";
import type { Names } from "./places.ts";
import { parseDictionary } from "./pronounce.ts";
import { RateChanger } from "./rate-changer.ts";
import { SOUND_RATE_HZ, Suppressor } from "./suppressor.ts";
import type { FromWorker, Piece, ToWorker } from "./worker-messages.ts";

type Message<Is extends ToWorker["is"]> = Extract<ToWorker, { is: Is }>;

const tell = (message: FromWorker) => postMessage(message);

interface Parts {
  suppressor: Suppressor;
  decoders: Decoders;
  /** A decoder that knows these words of the angler's own. */
  knowing(own: Names): Promise<PhraseDecoder>;
}

async function prepare({ base, own }: Message<"prepare">): Promise<Parts> {
  const files = new EarsFiles(base);
  const text = async (file: "words.txt" | "dictionary.txt" | "grammar.fsg") =>
    new TextDecoder().decode(await files.read(file));
  const parts = MODEL_PARTS.map(async (part) => [part, await files.read(part)] as const);
  const model = Object.fromEntries(await Promise.all(parts)) as unknown as ModelFiles;
  const wasmBinary = (await files.read("decoder.wasm")).buffer;
  const module = (await createModule({ wasmBinary })) as DecoderModule;
  const words = parseDictionary(await text("words.txt"));
  const grammar = await text("grammar.fsg");
  const knowing = async (names: Names) => {
    const known = await withOwnWords(words, names, () => text("dictionary.txt"));
    const { fsg, dictionary } = languageOf(grammar, known, names);
    return new PhraseDecoder({ module, model, dictionary, fsg });
  };
  return {
    suppressor: await Suppressor.create(await files.read("suppressor.wasm")),
    decoders: {
      phrases: await knowing(own),
      loop: new PhraseDecoder({ module, model, dictionary: LOOP_DICTIONARY, fsg: phoneLoop() }),
    },
    knowing,
  };
}

/** Pieces of sound in, at any rate; what is heard is told. */
class Hearing {
  readonly #ear: Ear;
  readonly #rates: RateChanger | undefined;
  /** Samples heard, and when the last of them was taken. */
  #samples = 0;
  #at = 0;
  #seconds = 0;

  constructor({ suppressor, decoders }: Parts, rateHz: number) {
    this.#rates = rateHz === SOUND_RATE_HZ ? undefined : new RateChanger(rateHz, SOUND_RATE_HZ);
    this.#ear = new Ear(suppressor, decoders, {
      onInterim: (text) => tell({ is: "interim", text }),
      onHeard: ({ text, fit, fromMs, toMs }) => {
        if (text === "" || fit < USUAL_LIMITS.refuseBelow) return;
        const confidence = confidenceOf(fit, USUAL_LIMITS);
        const [startedAt, endedAt] = [this.#timeOf(fromMs), this.#timeOf(toMs)];
        tell({ is: "heard", text, confidence, startedAt, endedAt });
      },
    });
  }

  hear({ samples, at }: Piece): void {
    const sound = this.#rates?.process(samples) ?? samples;
    this.#samples += sound.length;
    this.#at = at;
    this.#ear.hear(sound);
    const seconds = Math.floor(this.#samples / SOUND_RATE_HZ);
    if (seconds > this.#seconds) tell({ is: "alive" });
    this.#seconds = seconds;
  }

  /** What was said so far is told, though the utterance may not be over. */
  end(): void {
    this.#ear.end();
  }

  /** @param ms of sound since the beginning */
  #timeOf(ms: number): number {
    return this.#at - (1000 * this.#samples) / SOUND_RATE_HZ + ms;
  }
}

function work(): void {
  let parts: Promise<Parts> | undefined;
  let hearing: Hearing | undefined;

  const prepared = (): Promise<Parts> => parts ?? Promise.reject(new Error("nothing is prepared"));

  /** The words change between two utterances: the ear keeps its place in the sound. */
  async function learn({ own }: Message<"learn">): Promise<Parts> {
    const known = await prepared();
    const phrases = await known.knowing(own);
    hearing?.end();
    known.decoders.phrases.delete();
    known.decoders.phrases = phrases;
    return known;
  }

  async function listen({ sound, rateHz }: Message<"listen">): Promise<void> {
    const heard = new Hearing(await prepared(), rateHz);
    hearing = heard;
    // Sound has been waiting on the port since the microphone was opened.
    sound.onmessage = ({ data }: MessageEvent<Piece>) => {
      try {
        heard.hear(data);
      } catch (cause) {
        sound.onmessage = null;
        tell({ is: "failed", detail: String(cause) });
      }
    };
    tell({ is: "ready" });
  }

  async function follow(message: ToWorker): Promise<void> {
    switch (message.is) {
      case "prepare":
        parts = prepare(message);
        await parts;
        break;
      case "learn":
        parts = learn(message);
        await parts;
        break;
      case "listen":
        await listen(message);
        break;
      case "finish":
        hearing?.end();
        hearing = undefined;
        tell({ is: "finished" });
    }
  }

  addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
    follow(data).catch((cause) => tell({ is: "failed", detail: String(cause) }));
  });
}

work();
