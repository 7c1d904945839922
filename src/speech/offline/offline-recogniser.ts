/** The recogniser inside the app: hears the phrases of the grammar, without a network. */

import type { Recogniser, RecogniserEars, Trouble, TroubleReason } from "../recogniser.ts";
import { EarsFiles } from "./ears-files.ts";
import { type Microphone, openMicrophone } from "./microphone.ts";
import type { Names } from "./places.ts";
import type { FromWorker, ToWorker } from "./worker-messages.ts";

/** By the name of what `getUserMedia` throws (W3C Media Capture and Streams). */
const REASONS: Readonly<Record<string, TroubleReason>> = {
  NotAllowedError: "not-allowed",
  SecurityError: "not-allowed",
  NotFoundError: "no-microphone",
  OverconstrainedError: "no-microphone",
  NotReadableError: "busy",
  AbortError: "aborted",
};

interface Run {
  ears: RecogniserEars;
  microphone: Microphone | undefined;
  asked: "nothing" | "stop" | "abort";
}

export class OfflineRecogniser implements Recogniser {
  readonly kind = "offline";
  readonly #base: string;
  readonly #own: () => Names;
  #worker: Worker | undefined;
  #run: Run | undefined;

  /**
   * Nothing is loaded before the first start, and nothing fetched: `EarsFiles.keep` does that.
   * @param base the address of the page's folder, with a slash at the end
   * @param own the names the angler added, by place; asked for at the first start
   */
  constructor(base: string, own: () => Names) {
    this.#base = base;
    this.#own = own;
  }

  start(ears: RecogniserEars): void {
    const run: Run = { ears, microphone: undefined, asked: "nothing" };
    this.#run = run;
    this.#open(run).catch((cause: Error) => {
      if (run === this.#run)
        this.#fail({ reason: REASONS[cause.name] ?? "stalled", detail: String(cause) });
    });
  }

  stop(): void {
    const run = this.#run;
    if (run?.asked !== "nothing") return;
    run.asked = "stop";
    // Without a microphone yet there is nothing to deliver; `#open` closes it when it comes.
    if (!run.microphone) this.#end();
    else this.#tell({ is: "finish" });
  }

  abort(): void {
    if (!this.#run) return;
    this.#run.asked = "abort";
    this.#end();
  }

  /** The grammar holds all there is to expect. */
  expect(): void {}

  async #open(run: Run): Promise<void> {
    if (!(await new EarsFiles(this.#base).areKept())) {
      const detail = "the ears' files have not been fetched";
      if (run === this.#run) this.#fail({ reason: "unsupported", detail });
      return;
    }
    this.#worker ??= this.#hire();
    const lost: Trouble = { reason: "no-microphone", detail: "taken away" };
    const microphone = await openMicrophone(() => this.#fail(lost));
    if (run !== this.#run) {
      microphone.close();
      return;
    }
    run.microphone = microphone;
    this.#tell({ is: "listen", sound: microphone.sound }, [microphone.sound]);
  }

  #hire(): Worker {
    const worker = new Worker(new URL("./ear-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.#follow(data);
    worker.onerror = ({ message }) => this.#follow({ is: "failed", detail: message });
    const prepare: ToWorker = { is: "prepare", base: this.#base, own: this.#own() };
    worker.postMessage(prepare);
    return worker;
  }

  #tell(message: ToWorker, handed: Transferable[] = []): void {
    this.#worker?.postMessage(message, handed);
  }

  #follow(message: FromWorker): void {
    const ears = this.#run?.ears;
    switch (message.is) {
      case "ready":
        ears?.onListening();
        break;
      case "interim":
        ears?.onInterim(message.text);
        break;
      case "heard":
        ears?.onUtterance({
          alternatives: [{ text: message.text, confidence: message.confidence }],
          startedAt: Date.now() - message.beganAgoMs,
          endedAt: Date.now() - message.endedAgoMs,
          by: "offline",
        });
        break;
      case "finished":
        if (this.#run?.asked === "stop") this.#end();
        break;
      case "failed":
        this.#fail({ reason: "stalled", detail: message.detail });
    }
  }

  #fail(trouble: Trouble): void {
    this.#run?.ears.onTrouble(trouble);
    this.#end();
  }

  #end(): void {
    const run = this.#run;
    this.#run = undefined;
    run?.microphone?.close();
    run?.ears.onEnd();
  }
}
