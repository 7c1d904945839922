/**
 * One ear: sound in, utterances out. Sound is cleaned, brought to the decoder's rate and given to
 * it while somebody speaks; in silence the decoder sleeps.
 */
import { Decimator } from "./decimator.ts";
import { DECODER_RATE_HZ } from "./decoder.ts";
import { type Decoders, finishBoth } from "./fit.ts";
import { SpeechDetector } from "./speech-detector.ts";
import { isSteadyTone } from "./steady-tone.ts";
import { FRAME_SAMPLES, SOUND_RATE_HZ, type Suppressor } from "./suppressor.ts";

export type { Decoders } from "./fit.ts";

export const FRAME_MS = (1000 * FRAME_SAMPLES) / SOUND_RATE_HZ;
/** Kept from before speech is noticed, so that the first sound of a word is not lost. */
const PRE_ROLL_FRAMES = 30;
const DECODER_FRAME_SAMPLES = (FRAME_SAMPLES * DECODER_RATE_HZ) / SOUND_RATE_HZ;
/** Nobody says so much in one breath; it is wind, a radio or a talk. */
const LONGEST_FRAMES = 1200;
/** Below this (root mean square, of 1) there is nothing to clean: the suppressor sleeps too. */
const SILENCE_LEVEL = 4e-4;

export interface Heard {
  /** The phrase that fits best; empty where none fits at all. */
  text: string;
  /** See `fit.ts`. */
  fit: number;
  /** Milliseconds of sound since the ear began. */
  fromMs: number;
  toMs: number;
  /** What the decoders were given: samples from -1 to 1 at `DECODER_RATE_HZ`. */
  sound: Float32Array;
}

export interface EarEvents {
  /** Words that may still change. */
  onInterim(text: string): void;
  onHeard(heard: Heard): void;
}

/** So often the words so far are asked for, in frames. */
const INTERIM_FRAMES = 20;

export class Ear {
  readonly #suppressor: Suppressor;
  readonly #decoders: Decoders;
  readonly #events: EarEvents;
  readonly #decimator = new Decimator(SOUND_RATE_HZ / DECODER_RATE_HZ);
  readonly #detector = new SpeechDetector();
  /** Sound that does not fill a frame yet. */
  #rest = new Float32Array(0);
  /** Before the first sound there was silence: the decoder expects some ahead of the words. */
  #preRoll: Float32Array[] = Array.from(
    { length: PRE_ROLL_FRAMES },
    () => new Float32Array(DECODER_FRAME_SAMPLES),
  );
  /** Frames since the ear began, and at which of them the utterance did. */
  #frames = 0;
  #beganAt = 0;
  /** The sound of the utterance so far. */
  #said: Float32Array[] = [];

  constructor(suppressor: Suppressor, decoders: Decoders, events: EarEvents) {
    this.#suppressor = suppressor;
    this.#decoders = decoders;
    this.#events = events;
  }

  /** @param sound samples from -1 to 1 at `SOUND_RATE_HZ`, as many as there are */
  hear(sound: Float32Array): void {
    const all = new Float32Array(this.#rest.length + sound.length);
    all.set(this.#rest);
    all.set(sound, this.#rest.length);
    let at = 0;
    for (; at + FRAME_SAMPLES <= all.length; at += FRAME_SAMPLES)
      this.#frame(all.subarray(at, at + FRAME_SAMPLES));
    this.#rest = all.slice(at);
  }

  /** Ends an utterance that is still going on; what was said is delivered. */
  end(): void {
    if (!this.#detector.speaking) return;
    this.#detector.cut();
    this.#finish();
  }

  #frame(sound: Float32Array): void {
    this.#frames += 1;
    const { sound: clean, speechChance } = isSilent(sound)
      ? { sound, speechChance: 0 }
      : this.#suppressor.process(sound);
    const slow = this.#decimator.process(clean);
    const wasSpeaking = this.#detector.speaking;
    // A steady hiss passes for speech now and then, though the suppressor leaves next to nothing of it.
    const isNothing = !wasSpeaking && isSilent(clean);
    const turn = this.#detector.next(isNothing ? 0 : speechChance);
    if (turn === "begins") this.#begin(slow);
    else if (wasSpeaking) this.#goOn(slow, turn === "ends");
    else this.#keep(slow);
  }

  #keep(sound: Float32Array): void {
    this.#preRoll.push(sound);
    if (this.#preRoll.length > PRE_ROLL_FRAMES) this.#preRoll.shift();
  }

  #begin(sound: Float32Array): void {
    // Of the pre-roll, what stands for the time before the ear began counts for none.
    this.#beganAt = Math.max(0, this.#frames - this.#preRoll.length - 1);
    for (const decoder of Object.values(this.#decoders)) decoder.start();
    for (const kept of this.#preRoll) this.#feed(kept);
    this.#preRoll = [];
    this.#feed(sound);
  }

  #goOn(sound: Float32Array, isLast: boolean): void {
    this.#feed(sound);
    const length = this.#frames - this.#beganAt;
    if (isLast) this.#finish();
    else if (length >= LONGEST_FRAMES) this.end();
    else if (length % INTERIM_FRAMES === 0)
      this.#events.onInterim(this.#decoders.phrases.best().text);
  }

  #finish(): void {
    const [fromMs, toMs] = [this.#beganAt * FRAME_MS, this.#frames * FRAME_MS];
    const { text, fit } = finishBoth(this.#decoders, this.#frames - this.#beganAt);
    const sound = joined(this.#said);
    this.#said = [];
    this.#events.onHeard({ text: isSteadyTone(sound) ? "" : text, fit, fromMs, toMs, sound });
  }

  #feed(sound: Float32Array): void {
    this.#said.push(sound);
    for (const decoder of Object.values(this.#decoders)) decoder.feed(sound);
  }
}

function joined(pieces: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function isSilent(sound: Float32Array): boolean {
  let sum = 0;
  for (const sample of sound) sum += sample * sample;
  return sum < SILENCE_LEVEL ** 2 * sound.length;
}
