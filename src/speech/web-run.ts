/**
 * One run of the browser's recogniser, from start to end. Whatever the browser forgets to report,
 * a run ends, once.
 */

import { Alarm, type Clock } from "./clock.ts";
import type { RecogniserEars, Trouble } from "./recogniser.ts";
import { WebResults } from "./web-results.ts";
import type { WebRecognition } from "./web-speech-types.ts";
import { troubleOfError, troubleOfException } from "./web-trouble.ts";

/** From start to the first sound of the microphone, once it has worked. */
export const START_LIMIT_MS = 10_000;
/** The same at the first start, when the browser may be asking for leave to use the microphone. */
export const FIRST_START_LIMIT_MS = 60_000;
/** Nothing at all reported for this long: the run may be dead, so it is renewed. */
export const QUIET_LIMIT_MS = 60_000;
/** From an error or a stop to `end`. */
export const END_LIMIT_MS = 3_000;
/** Words that have not changed for this long count as said. */
export const INTERIM_STILL_MS = 1_500;

export interface WebRunOptions {
  continuous: boolean;
  startLimitMs: number;
  clock: Clock;
  /** True when an error concerns an extra that the next run will go without. */
  absorbs(code: string): boolean;
}

export class WebRun {
  readonly #recognition: WebRecognition;
  readonly #ears: RecogniserEars;
  readonly #options: WebRunOptions;
  readonly #results: WebResults;
  readonly #watchdog: Alarm;
  readonly #still: Alarm;
  #phase: "starting" | "hearing" | "ending" | "ended" = "starting";
  #asked: "nothing" | "stop" | "abort" = "nothing";
  /** Why it ends is known, so a missing end is no further trouble. */
  #troubled = false;

  constructor(recognition: WebRecognition, ears: RecogniserEars, options: WebRunOptions) {
    this.#recognition = recognition;
    this.#ears = ears;
    this.#options = options;
    this.#results = new WebResults(options.continuous, options.clock.now, ears);
    this.#watchdog = new Alarm(options.clock);
    this.#still = new Alarm(options.clock);
  }

  start(): void {
    this.#attach();
    this.#watchdog.set(() => this.#giveUp("no audio after start"), this.#options.startLimitMs);
    try {
      this.#recognition.start();
    } catch (thrown) {
      this.#tell(troubleOfException(thrown));
      this.#finish();
    }
  }

  stop(): void {
    if (this.#asked === "nothing") this.#ask("stop");
  }

  abort(): void {
    if (this.#asked !== "abort") this.#ask("abort");
  }

  #attach(): void {
    const recognition = this.#recognition;
    recognition.onaudiostart = () => this.#hears();
    recognition.onsoundstart = () => this.#hears();
    recognition.onspeechstart = () => {
      this.#hears();
      this.#results.speechStarted();
    };
    recognition.onresult = ({ results }) => {
      this.#hears();
      if (this.#asked !== "abort") this.#takeResults(results);
    };
    recognition.onerror = ({ error, message }) => this.#failed(error, message);
    recognition.onend = () => this.#finish();
  }

  #detach(): void {
    const recognition = this.#recognition;
    recognition.onaudiostart = null;
    recognition.onsoundstart = null;
    recognition.onspeechstart = null;
    recognition.onresult = null;
    recognition.onerror = null;
    recognition.onend = null;
  }

  #hears(): void {
    if (this.#phase === "ending") return;
    const first = this.#phase === "starting";
    this.#phase = "hearing";
    this.#watchdog.set(() => this.stop(), QUIET_LIMIT_MS);
    if (first) this.#ears.onListening();
  }

  #takeResults(results: Parameters<WebResults["take"]>[0]): void {
    const before = this.#results.openText;
    this.#results.take(results);
    const open = this.#results.openText;
    if (!open) this.#still.clear();
    else if (open !== before) this.#still.set(() => this.#promote(), INTERIM_STILL_MS);
  }

  /** Ends the run as well: what the browser makes of the same words later would blur with new ones. */
  #promote(): void {
    this.#results.promote();
    this.stop();
  }

  #failed(code: string, message: string | undefined): void {
    const wanted = code === "aborted" && this.#asked !== "nothing";
    if (this.#options.absorbs(code)) this.#troubled = true;
    else if (!wanted) this.#tell(troubleOfError(code, message));
    this.#awaitEnd(`no end after ${code}`);
  }

  #ask(how: "stop" | "abort"): void {
    if (this.#phase === "ended") return;
    this.#asked = how;
    this.#awaitEnd(`no end after ${how}`);
    this.#recognition[how]();
  }

  #awaitEnd(detail: string): void {
    if (this.#phase === "ended") return;
    this.#phase = "ending";
    this.#watchdog.set(() => {
      this.#stalled(detail);
      this.#detach();
      this.#recognition.abort();
      this.#finish();
    }, END_LIMIT_MS);
  }

  #giveUp(detail: string): void {
    this.#stalled(detail);
    this.abort();
  }

  #stalled(detail: string): void {
    if (!this.#troubled) this.#tell({ reason: "stalled", detail });
  }

  #tell(trouble: Trouble): void {
    this.#troubled = true;
    this.#ears.onTrouble(trouble);
  }

  #finish(): void {
    if (this.#phase === "ended") return;
    this.#phase = "ended";
    this.#watchdog.clear();
    this.#still.clear();
    this.#detach();
    if (this.#asked !== "abort") this.#results.promote();
    this.#ears.onEnd();
  }
}
