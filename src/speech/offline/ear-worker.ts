/** The ear at work, away from the page. */
import createModule from "soundswallower";
import { withAccent } from "./accents.ts";
import { PhraseDecoder } from "./decoder.ts";
import { type DecoderModule, MODEL_PARTS, type ModelFiles } from "./decoder-module.ts";
import { type Decoders, Ear } from "./ear.ts";
import { EarsFiles } from "./ears-files.ts";
import { languageOf } from "./ears-language.ts";
import { confidenceOf } from "./fit.ts";
import { fromMuLaw, toMuLaw } from "./mu-law.ts";
import { withOwnWords } from "./own-words.ts";
import { LOOP_DICTIONARY, phoneLoop } from "./phone-loop.ts";
import { parseDictionary } from "./pronounce.ts";
import { RateChanger } from "./rate-changer.ts";
import { isTold, limitsOf, type Manner, type Suit, warped } from "./suit.ts";
import { SOUND_RATE_HZ, Suppressor } from "./suppressor.ts";
import { judge } from "./trial.ts";
import type { FromWorker, Piece, ToWorker, Tried } from "./worker-messages.ts";

type Message<Is extends ToWorker["is"]> = Extract<ToWorker, { is: Is }>;

const tell = (message: FromWorker) => postMessage(message);

interface Parts {
  suppressor: Suppressor;
  decoders: Decoders;
  /** Decoders that know the angler's own words, and how he says words. */
  knowing(own: Suit["own"], manner: Manner): Promise<Decoders>;
  suit: Suit;
}

async function prepare({ base, suit }: Message<"prepare">): Promise<Parts> {
  const files = new EarsFiles(base);
  const text = async (file: "words.txt" | "dictionary.txt" | "grammar.fsg") =>
    new TextDecoder().decode(await files.read(file));
  const parts = MODEL_PARTS.map(async (part) => [part, await files.read(part)] as const);
  const model = Object.fromEntries(await Promise.all(parts)) as unknown as ModelFiles;
  const wasmBinary = (await files.read("decoder.wasm")).buffer;
  const module = (await createModule({ wasmBinary })) as DecoderModule;
  const words = parseDictionary(await text("words.txt"));
  const grammar = await text("grammar.fsg");
  const knowing = async (own: Suit["own"], manner: Manner) => {
    const known = await withOwnWords(words, own, () => text("dictionary.txt"));
    const { fsg, dictionary } = languageOf(grammar, withAccent(known, manner.accent), own);
    const common = { module, model, config: warped(manner) };
    return {
      phrases: new PhraseDecoder({ ...common, dictionary, fsg }),
      loop: new PhraseDecoder({ ...common, dictionary: LOOP_DICTIONARY, fsg: phoneLoop() }),
    };
  };
  return {
    suppressor: await Suppressor.create(await files.read("suppressor.wasm")),
    decoders: await knowing(suit.own, suit.voice),
    knowing,
    suit,
  };
}

/** Whoever listens meanwhile is heard. */
const othersTurn = () => new Promise((done) => setTimeout(done));

function dismiss({ phrases, loop }: Decoders): void {
  phrases.delete();
  loop.delete();
}

/** Pieces of sound in, at any rate; what is heard is told. */
class Hearing {
  readonly #ear: Ear;
  readonly #rates: RateChanger | undefined;
  /** Samples heard, and when the last of them was taken. */
  #samples = 0;
  #at = 0;
  #seconds = 0;

  constructor(parts: Parts, rateHz: number) {
    const { suppressor, decoders } = parts;
    this.#rates = rateHz === SOUND_RATE_HZ ? undefined : new RateChanger(rateHz, SOUND_RATE_HZ);
    this.#ear = new Ear(suppressor, decoders, {
      onInterim: (text) => tell({ is: "interim", text }),
      onHeard: ({ text, fit, fromMs, toMs, sound }) => {
        const { voice, withSound } = parts.suit;
        const limits = limitsOf(voice);
        if (!isTold(text, fit, limits)) return;
        const confidence = confidenceOf(fit, limits);
        const [startedAt, endedAt] = [this.#timeOf(fromMs), this.#timeOf(toMs)];
        const kept = withSound ? { sound: toMuLaw(sound) } : {};
        tell({ is: "heard", text, confidence, startedAt, endedAt, ...kept });
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
  /** The microphone of whoever listens now. */
  let port: MessagePort | undefined;

  const prepared = (): Promise<Parts> => parts ?? Promise.reject(new Error("nothing is prepared"));

  /** The words change between two utterances: the ear keeps its place in the sound. */
  async function learn({ suit }: Message<"learn">): Promise<Parts> {
    const known = await prepared();
    const decoders = await known.knowing(suit.own, suit.voice);
    hearing?.end();
    dismiss(known.decoders);
    Object.assign(known.decoders, decoders);
    known.suit = suit;
    return known;
  }

  async function hearAnew({ sounds, manner }: Message<"try">): Promise<void> {
    const { knowing, suit } = await prepared();
    const decoders = await knowing(suit.own, manner);
    const tried: Tried[] = [];
    for (const sound of sounds) {
      tried.push(judge(decoders, fromMuLaw(sound)));
      await othersTurn();
    }
    dismiss(decoders);
    tell({ is: "tried", tried });
  }

  async function listen({ sound, rateHz }: Message<"listen">): Promise<void> {
    port = sound;
    const heard = new Hearing(await prepared(), rateHz);
    // It was told to finish before it was ready: what it would say now would be taken for another's.
    if (port !== sound) return;
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
      case "try":
        await hearAnew(message);
        break;
      case "listen":
        await listen(message);
        break;
      case "finish":
        // Sound that still comes would begin an utterance that nobody ends, with the next one's decoders.
        port?.close();
        port = undefined;
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
