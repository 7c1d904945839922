/** The ear's worker itself, with real decoders, played in the test's own thread. */
import { gzipSync } from "node:zlib";
import { vi } from "vitest";
import { EARS_FILES, EARS_FOLDER, LIST_FILE } from "../../../src/speech/offline/ears-files.ts";
import { type Suit, USUAL_VOICE } from "../../../src/speech/offline/suit.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import type {
  FromWorker,
  Piece,
  Told,
  ToWorker,
} from "../../../src/speech/offline/worker-messages.ts";
import { earsPack } from "../../tools/build/ears-pack.ts";
import { resample } from "../../tools/resample.ts";
import { readWav } from "../../tools/wav.ts";

const BASE = "https://pegs.example/";
/** As much as an audio worklet gathers. */
const PIECE_SAMPLES = 1440;
export const SUIT: Suit = { own: {}, voice: USUAL_VOICE, withSound: false };

/** The files as they are kept on a phone. */
function keptFiles(): Map<string, Uint8Array> {
  const pack = earsPack();
  const list = EARS_FILES.map((file) => [file, { name: file, bytes: 1 }]);
  const files = new Map(EARS_FILES.map((file) => [file as string, gzipSync(pack[file])]));
  files.set(LIST_FILE, Buffer.from(JSON.stringify(Object.fromEntries(list))));
  return files;
}

type Hear = (event: { data: ToWorker }) => void;

export class RealWorker {
  readonly told: FromWorker[] = [];
  #hear: Hear = () => {};

  /** To be called once a test file: the module works in whatever thread it is loaded in. */
  async begin(): Promise<void> {
    const files = keptFiles();
    const match = async (address: string) => {
      const bytes = files.get(address.replace(BASE + EARS_FOLDER, ""));
      return bytes && new Response(new Uint8Array(bytes));
    };
    vi.stubGlobal("caches", { open: async () => ({ match }) });
    vi.stubGlobal("postMessage", (message: FromWorker) => void this.told.push(message));
    vi.stubGlobal("addEventListener", (_: string, hear: Hear) => {
      this.#hear = hear;
    });
    await import("../../../src/speech/offline/ear-worker.ts");
    this.tell({ is: "prepare", base: BASE, suit: SUIT });
  }

  tell(message: ToWorker): void {
    this.#hear({ data: message });
  }

  get words(): string[] {
    return this.told.map((one) => (one.is === "heard" ? `heard: ${one.text}` : one.is));
  }

  /** The first utterance it told. */
  get heard(): Told {
    const heard = this.told.find((one) => one.is === "heard");
    if (!heard) throw new Error("Nothing was heard.");
    return heard;
  }

  async until(is: FromWorker["is"]): Promise<void> {
    await vi.waitUntil(() => this.told.some((one) => one.is === is), { timeout: 50_000 });
  }
}

/** A microphone that gives what it is told to. */
export class FilePort {
  readonly #channel = new MessageChannel();
  #at = 0;

  constructor(at: number) {
    this.#at = at;
  }

  listen(worker: RealWorker): void {
    worker.tell({ is: "listen", sound: this.#channel.port2, rateHz: SOUND_RATE_HZ });
  }

  /** Until the worker has taken all of it. */
  async give(sound: Float32Array): Promise<void> {
    for (let at = 0; at < sound.length; at += PIECE_SAMPLES) {
      const samples = sound.slice(at, at + PIECE_SAMPLES);
      this.#at += (1000 * samples.length) / SOUND_RATE_HZ;
      this.#channel.port1.postMessage({ samples, at: this.#at } satisfies Piece);
    }
    await this.#passed();
  }

  close(): void {
    this.#channel.port1.close();
  }

  /** Messages come in the order they were sent in, on whatever channel. */
  #passed(): Promise<void> {
    const { port1, port2 } = new MessageChannel();
    return new Promise((done) => {
      port2.onmessage = () => {
        port2.close();
        done();
      };
      port1.postMessage(undefined);
    });
  }
}

export const silence = (seconds: number) => new Float32Array(seconds * SOUND_RATE_HZ);

/** Recorded, and without the silence around it. */
export function said(file: string): Float32Array {
  const { samples, rateHz } = readWav(file);
  return resample(samples, rateHz, SOUND_RATE_HZ);
}
