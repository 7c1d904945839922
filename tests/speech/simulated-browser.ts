/**
 * A browser's recognition through a long day: it hears words as they are spoken, ends by itself,
 * and fails in every known way. It keeps its own account of what it reported and when it heard.
 */

import type { Clock, Timer } from "../../src/speech/clock.ts";
import type { WebRecognitionConstructor } from "../../src/speech/web-speech-types.ts";
import { final, interim } from "./fake-recognition.ts";
import { SilentRecognition } from "./silent-recognition.ts";

export const OPENING_MS = 120;
/** Chrome desktop: a continuous session ends after about 15 s of silence. */
export const SILENCE_MS = 15_000;
const FINAL_AFTER_MS = 600;

export const FAULTS = [
  "network",
  "not-allowed",
  "no-speech",
  "aborted mid-run",
  "dead start",
  "deaf",
  "no end",
  "no final",
  "start throws",
] as const;
export type Fault = (typeof FAULTS)[number];

export interface Day {
  clock: Clock;
  random: () => number;
  /** Chrome on Android: one utterance a run, partial results marked final, finals repeated. */
  android: boolean;
  /** Chance that a start goes wrong, 0 to 1; never two in a row. */
  faultChance: number;
}

export class SimulatedBrowser {
  readonly day: Day;
  readonly faults = new Map<Fault, number>();
  /** Every word that reached a page still listening for results. */
  readonly reported = new Set<string>();
  /** When words could be heard, in milliseconds of the clock's `elapsed`; the last may be open. */
  readonly hearing: Array<{ from: number; to: number }> = [];
  readonly starts: number[] = [];
  readonly Recognition: WebRecognitionConstructor;
  #active: Simulated | undefined;
  #lastFaulty = true;

  constructor(day: Day) {
    this.day = day;
    const browser = this;
    this.Recognition = class extends Simulated {
      constructor() {
        super(browser);
      }
    };
  }

  /** A word is spoken; whether anyone hears it is another matter. */
  hear(word: string, isLast: boolean): void {
    this.#active?.hear(word, isLast);
  }

  begin(run: Simulated): Fault | undefined {
    if (this.#active) throw new Error("two recognisers were started at once");
    this.#active = run;
    this.starts.push(this.day.clock.elapsed());
    const fault = this.#nextFault();
    if (fault) this.faults.set(fault, (this.faults.get(fault) ?? 0) + 1);
    return fault;
  }

  leave(run: Simulated): void {
    if (this.#active === run) this.#active = undefined;
  }

  #nextFault(): Fault | undefined {
    const { random, faultChance } = this.day;
    this.#lastFaulty = !this.#lastFaulty && random() < faultChance;
    return this.#lastFaulty ? FAULTS[Math.floor(random() * FAULTS.length)] : undefined;
  }
}

class Simulated extends SilentRecognition {
  readonly #browser: SimulatedBrowser;
  #fault: Fault | undefined;
  #open: { from: number; to: number } | undefined;
  /** The words of each utterance heard; the last may be going on. */
  #utterances: string[][] = [];
  #settled = 0;
  #timers: Timer[] = [];
  #silence: Timer | undefined;

  constructor(browser: SimulatedBrowser) {
    super();
    this.#browser = browser;
  }

  start(): void {
    this.#fault = this.#browser.begin(this);
    if (this.#fault === "start throws") {
      this.#browser.leave(this);
      throw new DOMException("as simulated", "InvalidStateError");
    }
    if (this.#fault === "dead start") return;
    if (this.#fault === "network" || this.#fault === "not-allowed") {
      this.#fail(this.#fault, 80);
      return;
    }
    this.#after(OPENING_MS, () => this.#opened());
  }

  stop(): void {
    this.#close();
    this.#cancelAll();
    if (this.#fault === "deaf" || this.#fault === "dead start") return;
    this.#after(200, () => {
      if (this.#settled < this.#utterances.length) this.#settle();
      if (this.#fault !== "no end") this.#end();
    });
  }

  abort(): void {
    this.#close();
    this.#cancelAll();
    this.#browser.leave(this);
    if (this.#fault === "dead start" || this.#fault === "deaf" || this.#fault === "no end") return;
    this.#fail("aborted", 10);
  }

  hear(word: string, isLast: boolean): void {
    if (!this.#open) return;
    const { android, random } = this.#browser.day;
    if (this.#utterances.length === this.#settled) {
      this.#utterances.push([]);
      this.onspeechstart?.();
    }
    this.#utterances.at(-1)?.push(word);
    this.#report();
    this.#listenForSilence();
    if (!isLast || this.#fault === "no final") return;
    this.#after(FINAL_AFTER_MS, () => {
      this.#settle();
      if (android) this.#after(80, () => this.#end());
      else if (random() < 0.3) this.#report();
    });
  }

  #opened(): void {
    this.onaudiostart?.();
    if (this.#fault === "deaf") return;
    const now = this.#browser.day.clock.elapsed();
    this.#open = { from: now, to: Number.POSITIVE_INFINITY };
    this.#browser.hearing.push(this.#open);
    this.#listenForSilence();
    if (this.#fault === "no-speech") this.#fail("no-speech", 8_000);
    if (this.#fault === "aborted mid-run") this.#fail("aborted", 2_500);
    if (this.#fault === "no end") this.#fail("network", 4_000);
  }

  /** Reports the whole list, as browsers do; on Android what goes on is called final as well. */
  #report(): void {
    if (!this.onresult) return;
    const { android } = this.#browser.day;
    const list = this.#utterances.map((words, index) => {
      const text = words.join(" ");
      if (index < this.#settled) return final(text, android ? 0 : 0.9);
      return android ? final(text, 0) : interim(text);
    });
    for (const word of this.#utterances.flat()) this.#browser.reported.add(word);
    this.onresult({ results: list });
  }

  #settle(): void {
    this.#settled = this.#utterances.length;
    this.#report();
    if (this.#browser.day.android) this.#report();
  }

  #listenForSilence(): void {
    const { clock } = this.#browser.day;
    if (this.#silence) clock.clearTimeout(this.#silence);
    this.#silence = clock.setTimeout(() => this.#end(), SILENCE_MS);
  }

  #fail(code: string, ms: number): void {
    this.#after(ms, () => {
      this.#close();
      this.onerror?.({ error: code, message: "" });
      if (this.#fault !== "no end") this.#after(10, () => this.#end());
      else this.#cancelAll();
    });
  }

  #end(): void {
    this.#close();
    this.#cancelAll();
    this.#browser.leave(this);
    this.onend?.();
  }

  #close(): void {
    if (this.#open) this.#open.to = this.#browser.day.clock.elapsed();
    this.#open = undefined;
  }

  #after(ms: number, run: () => void): void {
    this.#timers.push(this.#browser.day.clock.setTimeout(run, ms));
  }

  #cancelAll(): void {
    const { clock } = this.#browser.day;
    for (const timer of this.#timers) clock.clearTimeout(timer);
    if (this.#silence) clock.clearTimeout(this.#silence);
    this.#timers = [];
  }
}
