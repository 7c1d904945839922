import type { Signal } from "@preact/signals";
import { systemClock } from "../speech/clock.ts";
import { Listener } from "../speech/listener.ts";
import type { ListenerState } from "../speech/listener-state.ts";
import { findLocalLanguage } from "../speech/on-device.ts";
import type { Recogniser, TroubleReason, Utterance } from "../speech/recogniser.ts";
import { type Answer, Talkback, type TalkbackLevel } from "../speech/talkback.ts";
import { TonePlayer } from "../speech/tone-player.ts";
import { troubleWords } from "../speech/trouble-words.ts";
import { findSynthesis, Voice } from "../speech/voice.ts";
import { hearsContinuously, WebRecogniser } from "../speech/web-recogniser.ts";
import { findWebSpeech } from "../speech/web-speech-types.ts";
import type { Hearing } from "./news.ts";
import { TabLock } from "./tab-lock.ts";

export interface EarsOptions {
  hearing: Signal<Hearing>;
  interim: Signal<string>;
  level: TalkbackLevel;
  onUtterance(utterance: Utterance): void;
}

const ELSEWHERE = {
  what: "Another tab is listening.",
  todo: "Go on in that tab, or stop listening there first.",
};

/** Hearing and speaking put together: half-duplex, in one tab at a time, shown through signals. */
export class Ears {
  readonly #options: EarsOptions;
  readonly #listener: Listener;
  readonly #talkback: Talkback;
  readonly #lock = new TabLock("pegscribe-ears");

  constructor(options: EarsOptions) {
    this.#options = options;
    const { hearing, interim } = options;
    const web = webRecogniser((isLocal) => this.#show({ sendsSound: !isLocal }));
    const recognisers: Recogniser[] = web ? [web] : [];
    hearing.value = web
      ? { ...hearing.value, sendsSound: true }
      : { is: "unavailable", trouble: wordsFor("unsupported"), sendsSound: false };
    this.#listener = new Listener({
      recognisers,
      events: {
        onState: (state) => this.#follow(state),
        onInterim: (text) => {
          interim.value = text;
        },
        onUtterance: (utterance) => {
          interim.value = "";
          options.onUtterance(utterance);
        },
        onTrouble: () => {},
      },
    });
    const synthesis = findSynthesis();
    this.#talkback = new Talkback({
      tones: new TonePlayer(),
      voice: synthesis && new Voice(synthesis, systemClock),
      level: options.level,
      hold: () => this.#listener.hold(),
      release: () => this.#listener.release(),
    });
  }

  /** To be called within a gesture the first time. */
  async start(): Promise<void> {
    this.unlock();
    if (await this.#lock.take()) this.#listener.start();
    else this.#show({ is: "refused", trouble: ELSEWHERE });
  }

  stop(): void {
    this.#listener.stop();
    this.#lock.release();
    // The listener says nothing where it never began, as with another tab listening.
    if (this.#listener.state.is === "off" && this.#options.hearing.value.is === "refused")
      this.#follow({ is: "off" });
  }

  /** Within any gesture: browsers keep silent before one. */
  unlock(): void {
    this.#talkback.unlock();
  }

  tell(answer: Answer): void {
    this.#talkback.answer(answer);
  }

  setLevel(level: TalkbackLevel): void {
    this.#talkback.level = level;
  }

  /** Words to expect, most telling first. */
  expect(phrases: readonly string[]): void {
    this.#listener.expect(phrases);
  }

  #follow(state: ListenerState): void {
    const { sendsSound } = this.#options.hearing.value;
    this.#options.hearing.value = {
      is: state.is,
      sendsSound,
      ...("kind" in state && { kind: state.kind }),
      ...("trouble" in state && { trouble: wordsFor(state.trouble.reason) }),
    };
    if (state.is !== "listening") this.#options.interim.value = "";
  }

  #show(part: Partial<Hearing>): void {
    this.#options.hearing.value = { ...this.#options.hearing.value, ...part };
  }
}

/** The browser's recogniser, which hears on the device as soon as that is found to be possible. */
function webRecogniser(onLocal: (isLocal: boolean) => void): WebRecogniser | undefined {
  const speech = findWebSpeech();
  if (!speech) return undefined;
  const web = new WebRecogniser(speech, { continuous: hearsContinuously(navigator) });
  findLocalLanguage(speech.Recognition).then((local) => {
    if (local?.status !== "available") return;
    web.hearLocally(local.lang);
    onLocal(true);
  });
  return web;
}

function wordsFor(reason: TroubleReason): NonNullable<Hearing["trouble"]> {
  const { what, remedy } = troubleWords(reason);
  return { what, todo: remedy };
}
