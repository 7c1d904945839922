/**
 * Answers the angler by tone and voice. A tone sounds at once; words queue behind it, where the
 * newest answer takes the place of older ones and warnings always get said.
 */

import { Alarm, type Clock, systemClock } from "./clock.ts";
import type { TonePlayer } from "./tone-player.ts";
import type { Outcome } from "./tones.ts";
import type { Voice } from "./voice.ts";

export type TalkbackLevel = "tones" | "short" | "full";

export interface Answer {
  /** Absent when there is nothing to tell by tone, as with the answer to a question. */
  outcome?: Outcome;
  short: string;
  full: string;
  /** True when the angler asked for it in words: then it is said at every level. */
  asked?: boolean;
}

export interface TalkbackOptions {
  tones: Pick<TonePlayer, "unlock" | "play">;
  /** Absent where the browser has no voice: then there are tones only. */
  voice?: Pick<Voice, "unlock" | "say" | "cancel"> | undefined;
  level: TalkbackLevel;
  /** Called before the voice begins, so that the device does not listen to itself. */
  hold(): void;
  release(): void;
  clock?: Clock;
}

interface Saying {
  text: string;
  warning: boolean;
}

export class Talkback {
  level: TalkbackLevel;
  readonly #options: TalkbackOptions;
  readonly #clock: Clock;
  readonly #afterTone: Alarm;
  #queue: Saying[] = [];
  #current: Saying | undefined;
  #toneUntil = Number.NEGATIVE_INFINITY;
  #holding = false;

  constructor(options: TalkbackOptions) {
    this.#options = options;
    this.level = options.level;
    this.#clock = options.clock ?? systemClock;
    this.#afterTone = new Alarm(this.#clock);
  }

  /** Within the first gesture: browsers keep silent before one. */
  unlock(): void {
    playAndRecord();
    this.#options.tones.unlock();
    this.#options.voice?.unlock();
  }

  answer(answer: Answer): void {
    if (answer.outcome) {
      const lengthMs = this.#options.tones.play(answer.outcome);
      this.#toneUntil = this.#clock.elapsed() + lengthMs;
    }
    const text = this.#wordsOf(answer);
    const warning = answer.outcome === "warning";
    if (!warning) this.#dropStale();
    if (text && this.#options.voice) this.#queue.push({ text, warning });
    this.#next();
  }

  /** At the level of tones, only what was asked for and what must not be missed is put in words. */
  #wordsOf({ outcome, short, full, asked }: Answer): string | undefined {
    if (this.level === "full") return full;
    return this.level === "short" || asked || outcome === "warning" ? short : undefined;
  }

  #dropStale(): void {
    this.#queue = this.#queue.filter(({ warning }) => warning);
    if (!this.#current || this.#current.warning) return;
    this.#current = undefined;
    this.#options.voice?.cancel();
  }

  #next(): void {
    this.#afterTone.clear();
    if (this.#current) return;
    if (this.#queue.length === 0) {
      this.#release();
      return;
    }
    this.#hold();
    const wait = this.#toneUntil - this.#clock.elapsed();
    if (wait > 0) this.#afterTone.set(() => this.#next(), wait);
    else this.#say();
  }

  #say(): void {
    const saying = this.#queue.shift();
    if (!saying) return;
    this.#current = saying;
    this.#options.voice?.say(saying.text, () => {
      this.#current = undefined;
      this.#next();
    });
  }

  #hold(): void {
    if (this.#holding) return;
    this.#holding = true;
    this.#options.hold();
  }

  #release(): void {
    if (!this.#holding) return;
    this.#holding = false;
    this.#options.release();
  }
}

/** iOS plays quietly after recognition unless told that both are wanted (Safari 16.4). */
function playAndRecord(): void {
  const session = (globalThis.navigator as { audioSession?: { type: string } } | undefined)
    ?.audioSession;
  if (session) session.type = "play-and-record";
}
