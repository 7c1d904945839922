/** The ear's worker and the microphone, played by hand. */
import type { Microphone } from "../../../src/speech/offline/microphone.ts";
import {
  type EarWorker,
  OfflineRecogniser,
} from "../../../src/speech/offline/offline-recogniser.ts";
import type { FromWorker, ToWorker } from "../../../src/speech/offline/worker-messages.ts";
import { FakeClock } from "../fake-clock.ts";
import { FakeEars } from "../fake-ears.ts";

export class ScriptedWorker implements EarWorker {
  onmessage: EarWorker["onmessage"] = null;
  onerror: EarWorker["onerror"] = null;
  readonly told: ToWorker[] = [];
  isTerminated = false;

  postMessage(message: ToWorker): void {
    this.told.push(message);
  }

  terminate(): void {
    this.isTerminated = true;
  }

  says(message: FromWorker): void {
    this.onmessage?.call(this as unknown as Worker, { data: message } as MessageEvent);
  }

  crashes(): void {
    this.onerror?.call(this as unknown as Worker, { message: "out of memory" } as ErrorEvent);
  }
}

export interface ScriptedMicrophone extends Microphone {
  isOpen: boolean;
  lose(why: string): void;
}

/** A recogniser with all that is around it in the test's hands. */
export class Scene {
  readonly clock = new FakeClock();
  readonly ears = new FakeEars();
  readonly workers: ScriptedWorker[] = [];
  readonly microphones: ScriptedMicrophone[] = [];
  areKept = true;
  /** What `getUserMedia` throws, by name. */
  refusal: string | undefined;
  /** The sound is on, and what follows never comes. */
  hangsOpening = false;
  /** What hangs fails or comes after all. */
  failLate = (_cause: Error): void => {};
  openLate = (): void => {};
  readonly recogniser = new OfflineRecogniser("https://pegs.example/", {
    clock: this.clock,
    areKept: async () => this.areKept,
    hire: () => {
      const worker = new ScriptedWorker();
      this.workers.push(worker);
      return worker;
    },
    openMicrophone: async (onLost, over) => {
      if (this.refusal) throw new DOMException("as told", this.refusal);
      const sound = new MessageChannel().port1;
      const microphone = { sound, rateHz: 48_000, isOpen: !over.aborted, lose: onLost };
      over.addEventListener("abort", () => {
        microphone.isOpen = false;
        sound.close();
      });
      this.microphones.push(microphone);
      if (this.hangsOpening)
        await new Promise<void>((open, fail) => {
          this.openLate = open;
          this.failLate = fail;
        });
      return microphone;
    },
  });

  get worker(): ScriptedWorker {
    const worker = this.workers.at(-1);
    if (!worker) throw new Error("No worker was hired.");
    return worker;
  }

  get openMicrophones(): number {
    return this.microphones.filter(({ isOpen }) => isOpen).length;
  }

  /** What the worker says of an utterance that has just ended. */
  heard(text: string) {
    const now = this.clock.now();
    return { is: "heard", text, confidence: 0.9, startedAt: now - 800, endedAt: now } as const;
  }

  /** Lets what was awaited come. */
  async settle(): Promise<void> {
    for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
  }

  async start(): Promise<void> {
    this.recogniser.start(this.ears);
    await this.settle();
  }

  /** Started, and hearing. */
  async listen(): Promise<void> {
    await this.start();
    this.worker.says({ is: "ready" });
  }
}
