/** The ears inside the app on a page of their own, to be driven by a test. */
import { EarsFiles } from "../../src/speech/offline/ears-files.ts";
import { OfflineRecogniser } from "../../src/speech/offline/offline-recogniser.ts";
import type { Utterance } from "../../src/speech/recogniser.ts";

export interface EarsPage {
  /** In order: "listening", troubles and "end". */
  told: string[];
  utterances: Utterance[];
  /** Fetches and keeps all; returns the shares of the whole as they were reported. */
  keep(): Promise<number[]>;
  start(): void;
  stop(): void;
}

declare global {
  interface Window {
    earsPage: EarsPage;
  }
}

// Where the ears' files stand in this build: at its root.
const base = new URL("/", document.baseURI).href;
const recogniser = new OfflineRecogniser(base, () => ({}));
const told: string[] = [];
const utterances: Utterance[] = [];

window.earsPage = {
  told,
  utterances,
  async keep() {
    const shares: number[] = [];
    await new EarsFiles(base).keep(({ loaded, total }) => shares.push(loaded / total));
    return shares;
  },
  start: () =>
    recogniser.start({
      onListening: () => void told.push("listening"),
      onInterim: () => {},
      onUtterance: (utterance) => void utterances.push(utterance),
      onTrouble: ({ reason }) => void told.push(reason),
      onEnd: () => void told.push("end"),
    }),
  stop: () => recogniser.stop(),
};
