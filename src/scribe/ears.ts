import { effect, type ReadonlySignal, type Signal, untracked } from "@preact/signals";
import { expectedPhrases } from "../../grammar/expected.ts";
import { namesByPlace } from "../../grammar/fsg/own-words.ts";
import type { OwnWords } from "../../grammar/vocabulary/vocabulary.ts";
import { systemClock } from "../speech/clock.ts";
import { Listener } from "../speech/listener.ts";
import type { ListenerState } from "../speech/listener-state.ts";
import { OfflineRecogniser } from "../speech/offline/offline-recogniser.ts";
import { findLocalLanguage } from "../speech/on-device.ts";
import { type EarsChoice, rankEars } from "../speech/ranking.ts";
import type { Recogniser, TroubleReason, Utterance } from "../speech/recogniser.ts";
import { type Answer, Talkback, type TalkbackLevel } from "../speech/talkback.ts";
import { TonePlayer } from "../speech/tone-player.ts";
import { findSynthesis, Voice } from "../speech/voice.ts";
import { hearsContinuously, WebRecogniser } from "../speech/web-recogniser.ts";
import { findWebSpeech } from "../speech/web-speech-types.ts";
import { listeningWords } from "../words/listening.ts";
import { Deafness } from "./deafness.ts";
import type { EarsCare } from "./ears-care.ts";
import { appFolder } from "./ears-here.ts";
import type { Hearing } from "./news.ts";
import { TabLock } from "./tab-lock.ts";
import { troubleOfEars } from "./trouble-of-ears.ts";

export interface EarsOptions {
  hearing: Signal<Hearing>;
  interim: Signal<string>;
  level: TalkbackLevel;
  choice: ReadonlySignal<EarsChoice>;
  /** Which ears there are; those of the browser are found out here. */
  care: EarsCare;
  onUtterance(utterance: Utterance): void;
}

/** Hearing and speaking put together: half-duplex, in one tab at a time, shown through signals. */
export class Ears {
  readonly #options: EarsOptions;
  readonly #offline: OfflineRecogniser;
  readonly #listener: Listener;
  readonly #talkback: Talkback;
  readonly #deafness: Deafness;
  readonly #lock = new TabLock("pegscribe-ears");
  #isWanted = false;

  constructor(options: EarsOptions) {
    this.#options = options;
    const { interim, care, choice } = options;
    this.#offline = new OfflineRecogniser(appFolder());
    const web = this.#findWeb();
    const recognisers: Recogniser[] = web ? [web, this.#offline] : [this.#offline];
    this.#listener = new Listener({
      recognisers,
      rank: () => this.#rank(),
      events: {
        onState: (state) => this.#follow(state),
        onInterim: (text) => {
          interim.value = text;
        },
        onUtterance: (utterance) => {
          interim.value = "";
          this.#deafness.forget();
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
    this.#deafness = new Deafness(systemClock, (reason) => {
      const { what, todo } = this.#wordsFor(reason);
      this.tell({ outcome: "warning", short: what, full: `${what} ${todo}` });
    });
    effect(() => {
      void [choice.value, care.web.value, care.offline.value];
      untracked(() => this.#reconsider());
    });
  }

  /** To be called within a gesture the first time. */
  async start(): Promise<void> {
    this.unlock();
    this.#deafness.forget();
    this.#isWanted = true;
    const isOurs = await this.#lock.take();
    // Told to stop meanwhile: the drill may have the microphone by now.
    if (!this.#isWanted) this.#lock.release();
    else if (isOurs) this.#listener.start();
    else this.#show({ is: "refused", sendsSound: false, trouble: listeningWords.elsewhere });
  }

  /** Resolves once the microphone is let go of. */
  stop(): Promise<void> {
    this.#isWanted = false;
    this.#listener.stop();
    this.#lock.release();
    // The listener says nothing where it never began, as with another tab listening.
    if (this.#listener.state.is === "off") this.#showAtRest();
    return this.#listener.ended();
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

  /** The words of the angler's own, which no ears know by themselves. */
  learn(own: OwnWords): void {
    this.#listener.expect(expectedPhrases(own));
    this.#offline.learn(namesByPlace(own));
  }

  /** For what hears apart from the listening, while that is off. */
  get inside(): OfflineRecogniser {
    return this.#offline;
  }

  /** How the angler's voice is to be taken by the ears inside the app. */
  suit(part: Parameters<OfflineRecogniser["suit"]>[0]): void {
    this.#offline.suit(part);
  }

  /** Holds the ears while something else is to be heard. */
  async holdFor(work: () => Promise<void>): Promise<void> {
    this.#listener.hold();
    try {
      await work();
    } finally {
      this.#listener.release();
    }
  }

  /** True unless the listening, and with it the warnings, is another tab's. */
  maySpeakUp(): Promise<boolean> {
    return this.#lock.isOurs();
  }

  /** The browser's recogniser, which hears on the device as soon as that is found to be possible. */
  #findWeb(): WebRecogniser | undefined {
    const speech = findWebSpeech();
    this.#options.care.web.value = speech ? "sends" : "none";
    if (!speech) return undefined;
    const web = new WebRecogniser(speech, {
      continuous: hearsContinuously(navigator),
      onLocalRefused: () => this.#localRefused(),
    });
    findLocalLanguage(speech.Recognition).then((local) => {
      if (local?.status !== "available") return;
      web.hearLocally(local.lang);
      this.#options.care.web.value = "on-device";
    });
    return web;
  }

  /** Sound that was to stay on the phone does not leave it before the angler knows, and starts anew. */
  #localRefused(): void {
    this.#options.care.web.value = "sends";
    if (this.#rank()[0] !== "web") return;
    void this.stop();
    const { what, todo } = listeningWords.notOnPhone;
    this.tell({ outcome: "warning", short: what, full: `${what} ${todo}` });
  }

  /** The angler's choice, or what there is to choose from, has changed. */
  #reconsider(): void {
    this.#listener.reconsider();
    if (this.#listener.state.is === "off") this.#showAtRest();
  }

  #rank() {
    const { choice, care } = this.#options;
    return rankEars({
      choice: choice.peek(),
      web: care.web.peek(),
      offline: care.offline.peek(),
      online: navigator.onLine,
    });
  }

  #follow(state: ListenerState): void {
    if (state.is === "off") this.#showAtRest();
    else this.#show(this.#hearingOf(state));
    if (state.is !== "listening") this.#options.interim.value = "";
    else if (state.kind === "web" && this.#rank().includes("offline")) void this.#offline.prepare();
    this.#deafness.follow(state);
  }

  #hearingOf(state: ListenerState): Hearing {
    const kind = "kind" in state ? state.kind : undefined;
    const reason = "trouble" in state ? state.trouble.reason : undefined;
    return {
      is: reason === "not-kept" ? "unavailable" : state.is,
      sendsSound: this.#sendsSound(kind),
      ...(kind && { kind }),
      ...(reason && { trouble: this.#wordsFor(reason) }),
    };
  }

  /** Before the first start, too, it is told who would listen, or that nobody can. */
  #showAtRest(): void {
    const [first] = this.#rank();
    const isThere = first === "web" || (first && this.#options.care.offline.peek() === "kept");
    const reason = first ? "not-kept" : "unsupported";
    this.#show(
      isThere
        ? { is: "off", sendsSound: this.#sendsSound(first) }
        : { is: "unavailable", sendsSound: false, trouble: this.#wordsFor(reason) },
    );
  }

  #sendsSound(kind: Recogniser["kind"] | undefined): boolean {
    return this.#options.care.web.peek() === "sends" && (kind ?? this.#rank()[0]) === "web";
  }

  #wordsFor(reason: TroubleReason) {
    const { web, offline } = this.#options.care;
    return troubleOfEars(reason, { web: web.peek(), offline: offline.peek() });
  }

  #show(hearing: Hearing): void {
    this.#options.hearing.value = hearing;
  }
}
