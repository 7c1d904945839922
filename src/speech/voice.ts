/** Says one thing at a time through the browser's speech synthesis, and always reports its end. */

import { Alarm, type Clock } from "./clock.ts";

/** `end` may never come: after this much, and so much for each letter, the voice counts as done. */
export const VOICE_LIMIT_MS = 4_000;
export const VOICE_LIMIT_PER_LETTER_MS = 150;

export interface Synthesis {
  synth: SpeechSynthesis;
  Utterance: typeof SpeechSynthesisUtterance;
}

export function findSynthesis(scope: object = globalThis): Synthesis | undefined {
  const { speechSynthesis: synth, SpeechSynthesisUtterance: Utterance } = scope as Partial<
    typeof globalThis
  >;
  return synth && Utterance ? { synth, Utterance } : undefined;
}

export class Voice {
  readonly #synthesis: Synthesis;
  readonly #watchdog: Alarm;
  /** Kept until it ends: Chrome drops one nobody refers to, `end` and all. */
  #utterance: SpeechSynthesisUtterance | undefined;

  constructor(synthesis: Synthesis, clock: Clock) {
    this.#synthesis = synthesis;
    this.#watchdog = new Alarm(clock);
  }

  /** Within a gesture: iOS stays mute until something was said in one. */
  unlock(): void {
    const silence = new this.#synthesis.Utterance(" ");
    silence.volume = 0;
    this.#synthesis.synth.speak(silence);
  }

  /** Calls `done` once, however it ends, unless it is cut short by `cancel`. */
  say(text: string, done: () => void): void {
    const { synth, Utterance } = this.#synthesis;
    const utterance = new Utterance(text);
    const voice = preferredVoice(synth.getVoices());
    if (voice) utterance.voice = voice;
    utterance.lang = voice?.lang ?? "en-GB";
    const finish = () => {
      if (this.#utterance !== utterance) return;
      this.#forget();
      done();
    };
    utterance.onend = finish;
    utterance.onerror = finish;
    this.#utterance = utterance;
    this.#watchdog.set(
      () => {
        synth.cancel();
        finish();
      },
      VOICE_LIMIT_MS + VOICE_LIMIT_PER_LETTER_MS * text.length,
    );
    synth.speak(utterance);
  }

  cancel(): void {
    if (!this.#utterance) return;
    this.#forget();
    this.#synthesis.synth.cancel();
  }

  #forget(): void {
    this.#utterance = undefined;
    this.#watchdog.clear();
  }
}

/** One on the device before one that needs a signal, British English before any English. */
export function preferredVoice(
  voices: readonly SpeechSynthesisVoice[],
): SpeechSynthesisVoice | undefined {
  const rank = ({ lang, localService }: SpeechSynthesisVoice) => {
    const british = /^en[-_]GB/i.test(lang);
    return (localService ? 2 : 0) + (british ? 1 : 0);
  };
  const english = voices.filter(({ lang }) => /^en\b|^en_/i.test(lang));
  return english.sort((a, b) => rank(b) - rank(a))[0];
}
