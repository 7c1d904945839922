/** A browser's recogniser that plays a script: what it reports after a start, a stop, an abort. */

import type { Clock, Timer } from "../../src/speech/clock.ts";
import type {
  WebPhrase,
  WebRecognitionConstructor,
  WebResult,
} from "../../src/speech/web-speech-types.ts";
import { SilentRecognition } from "./silent-recognition.ts";

export type Action = (recognition: FakeRecognition) => void;
/** Milliseconds after the start (or stop, or abort), and what is then reported. */
export type Step = readonly [atMs: number, action: Action];

export interface Script {
  name: string;
  steps: readonly Step[];
  /** The name of the exception that `start` throws. */
  throws?: string;
  onStop?: readonly Step[];
  onAbort?: readonly Step[];
}

export const audio: Action = (r) => r.onaudiostart?.();
export const speech: Action = (r) => r.onspeechstart?.();
export const end: Action = (r) => r.finish();
export const error =
  (code: string): Action =>
  (r) =>
    r.onerror?.({ error: code, message: "" });
/** The whole list of results, as each event carries it. */
export const results =
  (...list: WebResult[]): Action =>
  (r) =>
    r.onresult?.({ results: list });

export function interim(transcript: string): WebResult {
  return { 0: { transcript, confidence: 0.5 }, length: 1, isFinal: false };
}

export function final(transcript: string, confidence = 0.9, ...others: string[]): WebResult {
  const alternatives = [transcript, ...others].map((text, rank) => ({
    transcript: text,
    confidence: rank === 0 ? confidence : 0,
  }));
  return Object.assign(alternatives, { isFinal: true });
}

const END_SOON: readonly Step[] = [[100, end]];
const ABORT: readonly Step[] = [
  [20, error("aborted")],
  [20, end],
];

export class FakeRecognition extends SilentRecognition {
  started = false;
  readonly #script: Script;
  readonly #clock: Clock;
  #timers: Timer[] = [];

  constructor(script: Script, clock: Clock) {
    super();
    this.#script = script;
    this.#clock = clock;
  }

  start(): void {
    const { throws, steps } = this.#script;
    if (throws) throw new DOMException("as scripted", throws);
    if (this.started) throw new DOMException("already started", "InvalidStateError");
    this.started = true;
    this.#play(steps);
  }

  stop(): void {
    if (this.started) this.#play(this.#script.onStop ?? END_SOON);
  }

  abort(): void {
    if (this.started) this.#play(this.#script.onAbort ?? ABORT);
  }

  finish(): void {
    this.started = false;
    this.#play([]);
    this.onend?.();
  }

  /** Drops whatever of the script is still to come. */
  #play(steps: readonly Step[]): void {
    for (const timer of this.#timers) this.#clock.clearTimeout(timer);
    this.#timers = steps.map(([ms, act]) => this.#clock.setTimeout(() => act(this), ms));
  }
}

/** Chrome's kind, which can hear on the device and be given phrases. */
export class FakeLocalRecognition extends FakeRecognition {
  processLocally = false;
  phrases: WebPhrase[] = [];
}

export class FakePhrase implements WebPhrase {
  readonly phrase: string;
  readonly boost: number;

  constructor(phrase: string, boost: number) {
    this.phrase = phrase;
    this.boost = boost;
  }
}

export interface FakeBrowser {
  Recognition: WebRecognitionConstructor;
  made: FakeRecognition[];
}

/** A recognition whose n-th object plays the n-th script, and the last one ever after. */
export function fakeBrowser(
  clock: Clock,
  scripts: readonly Script[],
  Kind: typeof FakeRecognition = FakeRecognition,
): FakeBrowser {
  const made: FakeRecognition[] = [];
  class Scripted extends Kind {
    constructor() {
      const script = scripts[Math.min(made.length, scripts.length - 1)];
      if (!script) throw new Error("no script given");
      super(script, clock);
      made.push(this);
    }
  }
  return { Recognition: Scripted, made };
}
