import { type ReadonlySignal, signal } from "@preact/signals";
import type { Reader } from "../../grammar/read.ts";
import { Alarm, type Clock, systemClock } from "../speech/clock.ts";
import { ACCENTS } from "../speech/offline/accents.ts";
import {
  chooseVoice,
  type Hearing,
  takenRight,
  talkTaken,
} from "../speech/offline/choose-voice.ts";
import {
  ALL_TOLD,
  isSameManner,
  type Manner,
  USUAL_VOICE,
  type VoiceChoice,
  WARPS,
} from "../speech/offline/suit.ts";
import type { Tried } from "../speech/offline/worker-messages.ts";
import type { Recogniser, Trouble, Utterance } from "../speech/recogniser.ts";
import { DRILL_PHRASES } from "../words/drill.ts";

export const QUIET_S = 10;
export const CHAT_S = 20;

/** What a voice gained: of the phrases read, how many each choice takes rightly. */
export interface Outcome {
  choice: VoiceChoice;
  phrases: number;
  right: { before: number; after: number };
  talk: { before: number; after: number; of: number };
  /** Utterances that were heard while it was quiet. */
  noise: number;
  lines: readonly { phrase: string; before: string; after: string }[];
}

export type DrillState =
  | { is: "ready" }
  | { is: "starting" }
  | { is: "reading"; index: number; phrase: string; heard?: string }
  | { is: "quiet" | "chat"; seconds: number }
  | { is: "working" }
  | { is: "done"; outcome: Outcome }
  | { is: "failed"; trouble?: Trouble };

/** The ears inside the app, as the drill uses them. */
export interface DrillEars extends Pick<Recogniser, "start" | "stop" | "abort"> {
  suit(part: { voice?: VoiceChoice; withSound?: boolean }): void;
  try(sounds: readonly Uint8Array[], manner: Manner): Promise<readonly Tried[]>;
}

export interface DrillOptions {
  ears: DrillEars;
  reader: Pick<Reader, "read">;
  /** Puts the ears back to what they were. */
  restore(): void;
  clock?: Clock;
}

/** With what was made of each phrase. */
interface Heard extends Hearing {
  texts: readonly string[];
}

/** Read twenty phrases, keep quiet, chat; then see what suits the voice. One run. */
export class Drill {
  readonly state: ReadonlySignal<DrillState>;
  readonly #state = signal<DrillState>({ is: "ready" });
  readonly #options: DrillOptions;
  readonly #alarm: Alarm;
  /** By phrase; the last try at each counts. */
  readonly #read = new Map<string, Uint8Array>();
  readonly #noise: Uint8Array[] = [];
  readonly #talk: Uint8Array[] = [];

  constructor(options: DrillOptions) {
    this.state = this.#state;
    this.#options = options;
    this.#alarm = new Alarm(options.clock ?? systemClock);
  }

  /** What was recorded, by name; mu-law at 8 kHz. */
  get recordings(): ReadonlyMap<string, Uint8Array> {
    const numbered = (kind: string, sounds: readonly Uint8Array[]) =>
      sounds.map((sound, index) => [`${kind} ${index + 1}`, sound] as const);
    return new Map([
      ...this.#read,
      ...numbered("quiet", this.#noise),
      ...numbered("talk", this.#talk),
    ]);
  }

  forget(): void {
    this.#read.clear();
    this.#noise.length = 0;
    this.#talk.length = 0;
  }

  /** To be called within a gesture, while nothing else uses the microphone. */
  start(): void {
    const { ears } = this.#options;
    this.forget();
    this.#state.value = { is: "starting" };
    ears.suit({ voice: ALL_TOLD, withSound: true });
    ears.start({
      onListening: () => this.#show(0),
      onInterim: () => {},
      onUtterance: (utterance) => this.#take(utterance),
      onTrouble: (trouble) => this.#fail(trouble),
      onEnd: () => {},
    });
  }

  /** Goes on without the phrase on the screen, or with what was heard of it. */
  next(): void {
    const state = this.#state.value;
    if (state.is === "reading") this.#show(state.index + 1);
  }

  stop(): void {
    this.#alarm.clear();
    this.#options.ears.abort();
    this.#options.restore();
    if (this.#state.value.is !== "done") this.#state.value = { is: "ready" };
  }

  #show(index: number): void {
    const phrase = DRILL_PHRASES[index];
    if (phrase === undefined) this.#count("quiet", QUIET_S);
    else this.#state.value = { is: "reading", index, phrase };
  }

  #take({ sound, alternatives }: Utterance): void {
    const state = this.#state.value;
    if (!sound) return;
    if (state.is === "quiet") this.#noise.push(sound);
    else if (state.is === "chat") this.#talk.push(sound);
    else if (state.is === "reading") {
      this.#read.set(state.phrase, sound);
      this.#state.value = { ...state, heard: alternatives[0]?.text ?? "" };
    }
  }

  #count(is: "quiet" | "chat", seconds: number): void {
    if (seconds > 0) {
      this.#state.value = { is, seconds };
      this.#alarm.set(() => this.#count(is, seconds - 1), 1000);
    } else if (is === "quiet") this.#count("chat", CHAT_S);
    else void this.#work().catch(() => this.#isWorking && this.#fail());
  }

  async #work(): Promise<void> {
    const { ears, restore } = this.#options;
    this.#state.value = { is: "working" };
    ears.stop();
    const usual = USUAL_VOICE.accent;
    const heard = await this.#hearIn(WARPS.map((warp) => ({ accent: usual, warp })));
    // Accents are tried at the best warp only: with every one it would take three times as long.
    const { warp } = chooseVoice(heard);
    const others = ACCENTS.filter((accent) => accent !== usual);
    heard.push(...(await this.#hearIn(others.map((accent) => ({ accent, warp })))));
    if (!this.#isWorking) return;
    restore();
    this.#state.value = { is: "done", outcome: this.#outcomeOf(heard) };
  }

  /** Once it was left it tries no more: the ears are wanted for hearing. */
  async #hearIn(manners: readonly Manner[]): Promise<Heard[]> {
    const heard: Heard[] = [];
    for (const manner of manners) if (this.#isWorking) heard.push(await this.#hear(manner));
    return heard;
  }

  get #isWorking(): boolean {
    return this.#state.value.is === "working";
  }

  async #hear(manner: Manner): Promise<Heard> {
    const sounds = [...this.#read.values(), ...this.#talk];
    const tried = await this.#options.ears.try(sounds, manner);
    const texts = tried.slice(0, this.#read.size).map(({ text }) => text);
    return { ...manner, ...this.#takesOf(tried), texts };
  }

  #takesOf(tried: readonly Tried[]): Omit<Hearing, keyof Manner> {
    const phrases = [...this.#read.keys()].map((phrase, index) => {
      const { text, fit } = tried[index] as Tried;
      return { fit, isRight: this.#means(text) === this.#means(phrase) };
    });
    const talk = tried.slice(this.#read.size).filter(({ text }) => this.#means(text) !== "[]");
    return { phrases, talk: talk.map(({ fit }) => fit), talks: this.#talk.length };
  }

  #means(text: string): string {
    return JSON.stringify(this.#options.reader.read([text]).statements);
  }

  #outcomeOf(heard: readonly Heard[]): Outcome {
    const choice = chooseVoice(heard);
    const [before, after] = [USUAL_VOICE, choice].map((manner) =>
      heard.find((one) => isSameManner(one, manner)),
    ) as [Heard, Heard];
    return {
      choice,
      phrases: this.#read.size,
      right: {
        before: takenRight(before, USUAL_VOICE),
        after: takenRight(after, choice),
      },
      talk: {
        before: talkTaken(before, USUAL_VOICE),
        after: talkTaken(after, choice),
        of: this.#talk.length,
      },
      noise: this.#noise.length,
      lines: [...this.#read.keys()].map((phrase, index) => ({
        phrase,
        before: before.texts[index] ?? "",
        after: after.texts[index] ?? "",
      })),
    };
  }

  #fail(trouble?: Trouble): void {
    this.#alarm.clear();
    this.#options.restore();
    this.#state.value = trouble ? { is: "failed", trouble } : { is: "failed" };
  }
}
