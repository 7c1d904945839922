/** What the ears can get hold of: a browser's recognition that hears, and what may keep the sound from it. */
import type { RecogniserEars, TroubleReason } from "../../../src/speech/recogniser.ts";
import type {
  WebRecognition,
  WebRecognitionConstructor,
} from "../../../src/speech/web-speech-types.ts";
import type { FakeClock } from "../../speech/fake-clock.ts";
import { SimulatedBrowser } from "../../speech/simulated-browser.ts";

/** Why nothing can be heard, as the browser reports it at every start. */
export type Block = "audio-capture" | "network" | "not-allowed";

const BLOCKED_AFTER_MS = 80;
const ENDED_AFTER_MS = 10;
/** From the end of the words to the ears inside the app handing them over. */
const INSIDE_LATE_MS = 410;
const INSIDE_READY_MS = 300;

export class Air {
  readonly browser: SimulatedBrowser;
  readonly Recognition: WebRecognitionConstructor;
  readonly inside: InsideEars;
  block: Block | undefined;
  #web: WebRecognition | undefined;

  constructor(
    clock: FakeClock,
    day: { random: () => number; android: boolean; faultChance: number },
  ) {
    const browser = new SimulatedBrowser({ clock, ...day });
    const air = this;
    this.browser = browser;
    this.inside = new InsideEars(clock, () => this.block);
    this.Recognition = class extends browser.Recognition {
      override start(): void {
        if (air.inside.isOpen) throw new Error("both ears had the microphone at once");
        air.#web = this;
        const code = air.block;
        if (code === undefined) {
          super.start();
          return;
        }
        clock.setTimeout(() => {
          this.onerror?.({ error: code, message: "" });
          clock.setTimeout(() => this.onend?.(), ENDED_AFTER_MS);
        }, BLOCKED_AFTER_MS);
      }
    };
  }

  /** How many words reached the page. */
  get reported(): number {
    return this.browser.reported.size + this.inside.reported.size;
  }

  /** Something takes the sound away, from what hears now too, until it is given back. */
  take(block: Block): void {
    this.block = block;
    const web = this.#web;
    web?.onerror?.({ error: block, message: "" });
    // What follows an error is its end alone.
    if (web) web.onerror = null;
    web?.abort();
    if (block !== "network")
      this.inside.lose(block === "not-allowed" ? "not-allowed" : "no-microphone");
  }

  /** The system has put the page to sleep: what heard then never reports anything again. */
  deafen(): void {
    const web = this.#web;
    if (!web) return;
    web.onresult = web.onerror = web.onend = web.onaudiostart = web.onspeechstart = null;
  }

  hear(word: string, isLast: boolean): void {
    if (this.block && this.block !== "network") return;
    this.browser.hear(word, isLast);
    this.inside.hear(word, isLast);
  }
}

/** The ears inside the app: they need no network, and hear what is said while they are open. */
export class InsideEars {
  readonly kind = "offline";
  readonly reported = new Set<string>();
  readonly #clock: FakeClock;
  readonly #block: () => Block | undefined;
  #ears: RecogniserEars | undefined;
  #listens = false;
  #words: string[] = [];

  constructor(clock: FakeClock, block: () => Block | undefined) {
    this.#clock = clock;
    this.#block = block;
  }

  get isOpen(): boolean {
    return this.#ears !== undefined;
  }

  start(ears: RecogniserEars): void {
    this.#ears = ears;
    this.#clock.setTimeout(() => {
      if (this.#ears !== ears) return;
      const block = this.#block();
      if (block && block !== "network")
        this.lose(block === "not-allowed" ? "not-allowed" : "no-microphone");
      else {
        this.#listens = true;
        ears.onListening();
      }
    }, INSIDE_READY_MS);
  }

  stop(): void {
    this.#deliver();
    this.#end();
  }

  abort(): void {
    this.#end();
  }

  expect(): void {}

  lose(reason: TroubleReason): void {
    if (!this.#ears) return;
    this.#deliver();
    this.#ears.onTrouble({ reason, detail: "as told" });
    this.#end();
  }

  hear(word: string, isLast: boolean): void {
    if (!this.#listens) return;
    this.#words.push(word);
    this.reported.add(word);
    this.#ears?.onInterim(this.#words.join(" "));
    if (isLast) this.#clock.setTimeout(() => this.#deliver(), INSIDE_LATE_MS);
  }

  #deliver(): void {
    if (this.#words.length === 0) return;
    const text = this.#words.join(" ");
    this.#words = [];
    const endedAt = this.#clock.now();
    this.#ears?.onUtterance({
      alternatives: [{ text, confidence: 0.8 }],
      startedAt: endedAt,
      endedAt,
      by: "offline",
    });
  }

  #end(): void {
    const ears = this.#ears;
    this.#ears = undefined;
    this.#listens = false;
    this.#words = [];
    ears?.onEnd();
  }
}
