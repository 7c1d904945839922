/** The recogniser inside the app: hears the phrases of the grammar, without a network. */

import { Alarm, type Clock, systemClock } from "../clock.ts";
import type { Recogniser, RecogniserEars, Trouble, TroubleReason } from "../recogniser.ts";
import { EarsFiles } from "./ears-files.ts";
import { type Microphone, type OpenMicrophone, openMicrophone } from "./microphone.ts";
import type { Names } from "./places.ts";
import { type Manner, type Suit, USUAL_VOICE, type VoiceChoice } from "./suit.ts";
import type { FromWorker, ToWorker, Tried } from "./worker-messages.ts";

/** At first the browser may be asking for leave to use the microphone. */
export const FIRST_OPEN_LIMIT_MS = 60_000;
/** Once it was open. */
export const OPEN_LIMIT_MS = 10_000;
/** From the open microphone to hearing; a slow phone loads the model for some seconds. */
export const READY_LIMIT_MS = 30_000;
/** No sound for so long: the system has halted it, or the worker hangs. */
export const SOUND_LIMIT_MS = 5_000;
/** From a stop to the last words. */
export const END_LIMIT_MS = 3_000;

/** By the name of what `getUserMedia` throws (W3C Media Capture and Streams). */
const REASONS: Readonly<Record<string, TroubleReason>> = {
  NotAllowedError: "not-allowed",
  SecurityError: "not-allowed",
  NotFoundError: "no-microphone",
  OverconstrainedError: "no-microphone",
  NotReadableError: "busy",
  AbortError: "aborted",
};

export type EarWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

/** What it works with in a browser; a test hands in its own. */
export interface OfflineParts {
  hire(): EarWorker;
  openMicrophone: OpenMicrophone;
  areKept(): Promise<boolean>;
  clock: Clock;
}

interface Run {
  ears: RecogniserEars;
  microphone: Microphone | undefined;
  isStopping: boolean;
  /** The worker hears for it: what it said before is of a run that was cut off. */
  isReady: boolean;
  /** What ends it, told with its end: until then there may still be words to deliver. */
  trouble: Trouble | undefined;
  over: AbortController;
}

export class OfflineRecogniser implements Recogniser {
  readonly kind = "offline";
  readonly #base: string;
  readonly #parts: OfflineParts;
  readonly #watch: Alarm;
  #suit: Suit = { own: {}, voice: USUAL_VOICE, withSound: false };
  #trial: { done(tried: readonly Tried[]): void; fail(cause: Error): void } | undefined;
  #worker: EarWorker | undefined;
  #run: Run | undefined;
  #wasOpen = false;

  /**
   * Nothing is loaded before the first start, and nothing fetched: `EarsFiles.keep` does that.
   * @param base the address of the page's folder, with a slash at the end
   */
  constructor(base: string, parts: Partial<OfflineParts> = {}) {
    this.#base = base;
    const areKept = () => new EarsFiles(base).areKept();
    this.#parts = { hire, openMicrophone, areKept, clock: systemClock, ...parts };
    this.#watch = new Alarm(this.#parts.clock);
  }

  /** The names the angler added, by place; also while it hears. */
  learn(own: Names): void {
    this.#change({ own });
  }

  /** How the angler's voice is to be taken, and whether utterances bring their sound. */
  suit(part: { voice?: VoiceChoice; withSound?: boolean }): void {
    this.#change(part);
  }

  /**
   * Hears kept utterances anew in another manner; not while it hears others. Fails where the ears'
   * files are not kept, or the worker fails.
   * @param sounds as utterances brought them
   */
  async try(sounds: readonly Uint8Array[], manner: Manner): Promise<readonly Tried[]> {
    await this.prepare();
    if (!this.#worker) throw new Error("the ears' files have not been fetched");
    return new Promise((done, fail) => {
      this.#trial = { done, fail };
      this.#tell({ is: "try", sounds, manner });
    });
  }

  /** Loads what hearing takes, so that a start later on is quick. */
  async prepare(): Promise<void> {
    if (!this.#worker && (await this.#parts.areKept())) this.#worker ??= this.#hire();
  }

  start(ears: RecogniserEars): void {
    const over = new AbortController();
    const [isStopping, isReady] = [false, false];
    const run: Run = { ears, microphone: undefined, isStopping, isReady, trouble: undefined, over };
    this.#run = run;
    const limitMs = this.#wasOpen ? OPEN_LIMIT_MS : FIRST_OPEN_LIMIT_MS;
    const trouble: Trouble = { reason: "stalled", detail: "the microphone did not open" };
    this.#watch.set(() => this.#fail(trouble), limitMs);
    this.#open(run).catch((cause: Error) => {
      if (run === this.#run)
        this.#fail({ reason: REASONS[cause.name] ?? "stalled", detail: String(cause) });
    });
  }

  stop(): void {
    const run = this.#run;
    if (!run || run.isStopping) return;
    run.isStopping = true;
    // Without a microphone yet there is nothing to deliver.
    if (!run.microphone) {
      this.#end();
      return;
    }
    this.#expectWithin(END_LIMIT_MS, "the worker did not finish");
    this.#tell({ is: "finish" });
  }

  abort(): void {
    // Else its last words would stand half decoded before the next one's first.
    if (this.#run?.microphone) this.#tell({ is: "finish" });
    this.#end();
  }

  /** The grammar holds all there is to expect. */
  expect(): void {}

  async #open(run: Run): Promise<void> {
    await this.prepare();
    if (run !== this.#run) return;
    if (!this.#worker) {
      this.#fail({ reason: "not-kept", detail: "the ears' files have not been fetched" });
      return;
    }
    const microphone = await this.#parts.openMicrophone((detail) => {
      if (run === this.#run) this.#halt({ reason: "no-microphone", detail });
    }, run.over.signal);
    if (run !== this.#run) return;
    this.#wasOpen = true;
    run.microphone = microphone;
    this.#expectWithin(READY_LIMIT_MS, "the worker did not get ready");
    const { sound, rateHz } = microphone;
    this.#tell({ is: "listen", sound, rateHz }, [sound]);
  }

  #hire(): EarWorker {
    const worker = this.#parts.hire();
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.#follow(data);
    worker.onerror = ({ message }) => this.#dismiss(message || "the worker did not load");
    const prepare: ToWorker = { is: "prepare", base: this.#base, suit: this.#suit };
    worker.postMessage(prepare, []);
    return worker;
  }

  /** A worker that failed once is not trusted again: the next start hires another. */
  #dismiss(detail: string): void {
    const worker = this.#worker;
    this.#worker = undefined;
    if (worker) {
      worker.onmessage = null;
      worker.onerror = null;
      worker.terminate();
    }
    this.#trial?.fail(new Error(detail));
    this.#fail({ reason: "stalled", detail });
  }

  #change(part: Partial<Suit>): void {
    const suit = { ...this.#suit, ...part };
    if (JSON.stringify(suit) === JSON.stringify(this.#suit)) return;
    this.#suit = suit;
    this.#tell({ is: "learn", suit });
  }

  #tell(message: ToWorker, handed: Transferable[] = []): void {
    this.#worker?.postMessage(message, handed);
  }

  #follow(message: FromWorker): void {
    if (message.is === "failed") this.#dismiss(message.detail);
    else if (message.is === "tried") this.#trial?.done(message.tried);
    else if (this.#run) this.#serve(this.#run, message);
  }

  #serve(run: Run, message: Exclude<FromWorker, { is: "failed" | "tried" }>): void {
    const { ears, isStopping } = run;
    if (message.is === "ready") run.isReady = true;
    else if (!run.isReady && message.is !== "finished") return;
    switch (message.is) {
      case "ready":
        if (isStopping) return;
        this.#expectSound("no sound came");
        ears.onListening();
        break;
      case "alive":
        if (!isStopping) this.#expectSound("the sound stopped coming");
        break;
      case "interim":
        ears.onInterim(message.text);
        break;
      case "heard": {
        const { is: _is, text, confidence, ...rest } = message;
        ears.onUtterance({ ...rest, alternatives: [{ text, confidence }], by: "offline" });
        break;
      }
      case "finished":
        if (isStopping) this.#end();
    }
  }

  #expectSound(detail: string): void {
    this.#watch.set(() => this.#halt({ reason: "stalled", detail }), SOUND_LIMIT_MS);
  }

  /** No more sound comes; what was said before that is still delivered. */
  #halt(trouble: Trouble): void {
    if (!this.#run || this.#run.isStopping) return;
    this.#run.trouble = trouble;
    this.stop();
  }

  #expectWithin(ms: number, detail: string): void {
    this.#watch.set(() => this.#dismiss(detail), ms);
  }

  #fail(trouble: Trouble): void {
    if (this.#run) this.#run.trouble ??= trouble;
    this.#end();
  }

  #end(): void {
    const run = this.#run;
    this.#run = undefined;
    this.#watch.clear();
    if (!run) return;
    run.over.abort();
    if (run.trouble) run.ears.onTrouble(run.trouble);
    run.ears.onEnd();
  }
}

const hire = (): EarWorker =>
  new Worker(new URL("./ear-worker.ts", import.meta.url), { type: "module" });
