/** The browser's own recogniser. */

import { type Clock, systemClock } from "./clock.ts";
import type { Recogniser, RecogniserEars } from "./recogniser.ts";
import { MAX_ALTERNATIVES } from "./web-results.ts";
import { FIRST_START_LIMIT_MS, START_LIMIT_MS, WebRun } from "./web-run.ts";
import type { WebRecognition, WebSpeech } from "./web-speech-types.ts";

/** On the draft's scale of 0 to 10: a lean towards the phrases, no more. From memory, untried. */
const PHRASE_BOOST = 4;

export interface WebRecogniserOptions {
  /** BCP 47; en-GB when absent. */
  lang?: string;
  /** False where a continuous run misbehaves; see `hearsContinuously`. */
  continuous: boolean;
  clock?: Clock;
  /** The device would not hear after all: the next start goes to the service, if there is one. */
  onLocalRefused?(): void;
}

export class WebRecogniser implements Recogniser {
  readonly kind = "web";
  readonly #speech: WebSpeech;
  readonly #lang: string;
  readonly #continuous: boolean;
  readonly #clock: Clock;
  readonly #onLocalRefused: () => void;
  #localLang: string | undefined;
  #isLocalRefused = false;
  #phrases: readonly string[] = [];
  #phrasesRefused = false;
  #run: WebRun | undefined;
  #everListened = false;

  constructor(speech: WebSpeech, options: WebRecogniserOptions) {
    this.#speech = speech;
    this.#lang = options.lang ?? "en-GB";
    this.#continuous = options.continuous;
    this.#clock = options.clock ?? systemClock;
    this.#onLocalRefused = () => options.onLocalRefused?.();
  }

  start(ears: RecogniserEars): void {
    if (this.#run) {
      ears.onTrouble({ reason: "busy", detail: "started while still hearing" });
      ears.onEnd();
      return;
    }
    this.#run = new WebRun(this.#prepared(), this.#watched(ears), {
      continuous: this.#continuous,
      startLimitMs: this.#everListened ? START_LIMIT_MS : FIRST_START_LIMIT_MS,
      clock: this.#clock,
      absorbs: (code) => this.#absorbs(code),
    });
    this.#run.start();
  }

  stop(): void {
    this.#run?.stop();
  }

  abort(): void {
    this.#run?.abort();
  }

  /** Taken up only when hearing on the device; the service takes no phrases. */
  expect(phrases: readonly string[]): void {
    this.#phrases = phrases;
  }

  /**
   * From the next start on, hears on the device in this language, which `findLocalLanguage` must
   * have found available; undefined hears through the browser's service again.
   */
  hearLocally(lang: string | undefined): void {
    this.#localLang = lang;
  }

  /** A fresh object for each run, so that nothing late from the one before can be mistaken. */
  #prepared(): WebRecognition {
    const recognition = new this.#speech.Recognition();
    recognition.lang = this.#localLang ?? this.#lang;
    recognition.continuous = this.#continuous;
    recognition.interimResults = true;
    recognition.maxAlternatives = MAX_ALTERNATIVES;
    // Phrases are refused by a run that is not set to the device beforehand.
    if (this.#localLang !== undefined && "processLocally" in recognition) {
      recognition.processLocally = true;
      this.#givePhrases(recognition);
    }
    return recognition;
  }

  #givePhrases(recognition: WebRecognition): void {
    const { Phrase } = this.#speech;
    if (!Phrase || this.#phrasesRefused || !("phrases" in recognition)) return;
    recognition.phrases = this.#phrases.map((phrase) => new Phrase(phrase, PHRASE_BOOST));
  }

  #watched(ears: RecogniserEars): RecogniserEars {
    return {
      onInterim: (text) => ears.onInterim(text),
      onUtterance: (utterance) => ears.onUtterance(utterance),
      onTrouble: (trouble) => ears.onTrouble(trouble),
      onListening: () => {
        this.#everListened = true;
        ears.onListening();
      },
      onEnd: () => {
        this.#run = undefined;
        // Before whoever listens starts again.
        if (this.#isLocalRefused) this.#onLocalRefused();
        this.#isLocalRefused = false;
        ears.onEnd();
      },
    };
  }

  #absorbs(code: string): boolean {
    if (code === "phrases-not-supported") {
      this.#phrasesRefused = true;
      return true;
    }
    if (code === "language-not-supported" && this.#localLang !== undefined) {
      this.#localLang = undefined;
      this.#isLocalRefused = true;
      return true;
    }
    return false;
  }
}

/**
 * False on Android, where a continuous run marks partial results final. A page shown there as on a
 * desktop calls itself Linux, so Linux with a touch screen counts too: the shorter runs do no harm.
 */
export function hearsContinuously(browser: { userAgent: string; maxTouchPoints: number }): boolean {
  const android = /Android/i.test(browser.userAgent);
  return !android && !(/Linux/i.test(browser.userAgent) && browser.maxTouchPoints > 1);
}
