import { computed, effect, type ReadonlySignal, type Signal } from "@preact/signals";
import { Language } from "../../grammar/language.ts";
import { fish } from "../../grammar/phrases/fish.ts";
import { createReader } from "../../grammar/read.ts";
import type { PastSession } from "../analysis/seasons/past.ts";
import { IdbMemos } from "../log/idb-memos.ts";
import { DECODER_RATE_HZ } from "../speech/offline/decoder.ts";
import { fromMuLaw } from "../speech/offline/mu-law.ts";
import { USUAL_VOICE } from "../speech/offline/suit.ts";
import { playSound } from "../speech/play-sound.ts";
import type { Utterance } from "../speech/recogniser.ts";
import type { Desks } from "./desks.ts";
import { Drill } from "./drill.ts";
import { Ears } from "./ears.ts";
import type { EarsCare } from "./ears-care.ts";
import { inPieces } from "./in-pieces.ts";
import { Memos } from "./memos.ts";
import type { Hearing, LastHeard } from "./news.ts";
import { ownWords } from "./own-words.ts";
import { PastShelf } from "./past-shelf.ts";
import { Scribe, type Spoken } from "./scribe.ts";
import type { Season } from "./season/season.ts";
import type { Settings } from "./settings.ts";

export interface AttendantOptions {
  desks: Desks;
  season: () => Promise<Season>;
  settings: Signal<Settings>;
  earsCare: EarsCare;
  /** What the attendant shows. */
  hearing: Signal<Hearing>;
  interim: Signal<string>;
  lastHeard: Signal<LastHeard | undefined>;
  nudge: Signal<string | undefined>;
  /** The entry that is on the screen, by its id. */
  inQuestion: ReadonlySignal<string | undefined>;
}

const NO_PAST: readonly PastSession[] = [];

/**
 * Hears, has it taken down at the desk that is open, and answers. With it comes all that is heavy,
 * the grammar and the sums: it is fetched after the first screen has been painted.
 */
export class Attendant {
  readonly ears: Ears;
  /** What earlier sessions left; of the angler's own, so none while the sample is shown. */
  readonly past: ReadonlySignal<readonly PastSession[]>;
  readonly memos: Memos;
  readonly #options: AttendantOptions;
  readonly #language = new Language();
  readonly #scribe: ReadonlySignal<Scribe>;
  readonly #ready: Promise<void>;

  constructor(options: AttendantOptions) {
    const { desks, season, settings, earsCare, hearing, interim, lastHeard, nudge } = options;
    const { inQuestion } = options;
    this.#options = options;
    this.#ready = this.#getReady();
    const shelf = new PastShelf(desks.own.store, async () => (await season()).complete());
    effect(() => void shelf.refresh(desks.own.sessions.value, desks.own.notebook.value.id));
    this.past = computed(() => (desks.current.value === desks.own ? shelf.past.value : NO_PAST));
    this.ears = new Ears({
      hearing,
      interim,
      level: settings.value.talkback,
      choice: computed(() => settings.value.ears),
      care: earsCare,
      onUtterance: (utterance) => void this.#take(utterance),
    });
    const { store, notebook } = desks.own;
    const isOn = () => settings.value.memos;
    this.memos = new Memos({ store: new IdbMemos(), notebook, log: store, isOn });
    effect(() => this.#suit());
    this.#scribe = computed(() => {
      const { notebook, keeping, now } = desks.current.value;
      return new Scribe({
        notebook: notebook.value,
        language: this.#language,
        trouble: () => keeping.value.trouble,
        settings: () => settings.value,
        setLevel: (talkback) => {
          settings.value = { ...settings.value, talkback };
        },
        now,
        past: () => this.past.value,
        // A sample day in a few minutes would be one long babble.
        tell: (answer) => desks.isHurried || this.ears.tell(answer),
        warn: async (answer) => {
          if (!desks.isHurried && (await this.ears.maySpeakUp())) this.ears.tell(answer);
        },
        remind: (words) => {
          nudge.value = words;
        },
        inQuestion: () => inQuestion.value,
      });
    });
    effect(() => this.ears.setLevel(settings.value.talkback));
    effect(() => {
      const { plan } = desks.current.value.session.value;
      this.ears.learn(ownWords(plan));
    });
    effect(() => {
      const { unsaved } = desks.current.value.keeping.value;
      const last = lastHeard.peek();
      if (unsaved === 0 && last && !last.isStored) lastHeard.value = { ...last, isStored: true };
    });
  }

  /**
   * Before anything is said, and without keeping a touch waiting. What is run for the first time takes
   * several times as long, so it is run once for nothing.
   */
  async #getReady(): Promise<void> {
    await inPieces(() => this.#language.prepare());
    const lines = ["", ...Object.keys(fish.examples).slice(0, 1)];
    await inPieces(() => {
      this.readings({ text: lines.shift() ?? "" });
      return lines.length > 0;
    });
  }

  async hear(spoken: Spoken): Promise<void> {
    await this.#ready;
    await this.#show(this.#scribe.value.hear(spoken));
  }

  /** Ends listening, and gets the ears inside the app ready to know a voice. */
  async drill(): Promise<Drill> {
    await this.ears.stop();
    return new Drill({
      ears: this.ears.inside,
      reader: createReader({}, this.#language),
      restore: () => this.#suit(),
    });
  }

  /** Plays the kept sound of an entry or a line; to be called within a gesture. */
  async playMemo(id: string): Promise<void> {
    // Read first: a disk that does not answer must not keep the ears held.
    const sound = await this.memos.sound(id);
    if (sound) await this.ears.holdFor(() => playSound(fromMuLaw(sound), DECODER_RATE_HZ));
  }

  /** To be called within a gesture: browsers let the first sound out only there. */
  async type(text: string): Promise<void> {
    this.ears.unlock();
    await this.#ready;
    await this.#show(this.#scribe.value.type(text));
  }

  /** Lets the voice be heard, at every level of talking back; to be called within a gesture. */
  say(words: string): void {
    this.ears.unlock();
    this.ears.tell({ outcome: "logged", short: words, full: words, asked: true });
  }

  /** Says what was asked for, without a tone; the first time within a gesture. */
  readOut(words: string): void {
    this.ears.unlock();
    this.ears.tell({ short: words, full: words, asked: true });
  }

  takeBack(): Promise<void> {
    return this.#show(this.#scribe.value.takeBack());
  }

  /** Speaks what has come due; to be called once a second or so. */
  look(): void {
    this.#scribe.value.look();
  }

  readings(heard: { text: string; alternatives?: readonly string[] | undefined }) {
    return this.#scribe.value.readings(heard);
  }

  #suit(): void {
    const { memos, voice = USUAL_VOICE } = this.#options.settings.value;
    this.ears.suit({ withSound: memos, voice });
  }

  async #take(utterance: Utterance): Promise<void> {
    const { desks, lastHeard } = this.#options;
    const isOwn = desks.current.value === desks.own;
    await this.hear(spoken(utterance));
    const { sound } = utterance;
    const last = lastHeard.value;
    if (sound && isOwn && last) await this.memos.keep({ text: last.text, at: last.at, sound });
  }

  async #show(hearing: Promise<LastHeard>): Promise<void> {
    this.#options.nudge.value = undefined;
    this.#options.lastHeard.value = await hearing;
  }
}

function spoken({ alternatives, startedAt, by }: Utterance): Spoken {
  const confidence = alternatives[0]?.confidence;
  return {
    alternatives: alternatives.map(({ text }) => text),
    by,
    startedAt,
    ...(confidence !== undefined && { confidence }),
  };
}
