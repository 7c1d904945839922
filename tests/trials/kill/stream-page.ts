/** What goes into the page beside the app: says phrases to it, and tells of each tone at once. */

/** What the page reports: that it was told to begin a phrase, or that a tone began. */
export type Report = "said" | "told";

export interface StreamOptions {
  /** The notes of "logged", in Hz. */
  motif: readonly number[];
  /** Where reports are taken. */
  address: string;
}

declare global {
  interface Window {
    stream: {
      /** Whether a tone would sound, and be told of. */
      isReady(): boolean;
      /** Says one phrase after the other. @param gapsMs how long after the phrase before */
      say(texts: readonly string[], gapsMs: readonly number[], confidence: number): Promise<void>;
    };
  }
}

/**
 * Self-contained, since it is sent to the page as text. Reports go out by a connection of the page's
 * own, which the process that stores has no part in.
 */
export function installStream({ motif, address }: StreamOptions): void {
  const socket = new WebSocket(address);
  const report = (what: Report) => socket.send(what);
  const contexts: AudioContext[] = [];
  window.AudioContext = class extends AudioContext {
    constructor(options?: AudioContextOptions) {
      super(options);
      contexts.push(this);
    }
  };
  // The notes of a motif are started in one go.
  let notes: number[] = [];
  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    if (notes.length === 0) {
      queueMicrotask(() => {
        if (notes.join() === motif.join()) report("told");
        notes = [];
      });
    }
    notes.push(this.frequency.value);
    return start.call(this, when);
  };
  const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
  window.stream = {
    isReady: () =>
      socket.readyState === WebSocket.OPEN && contexts.some(({ state }) => state === "running"),
    async say(texts, gapsMs, confidence) {
      for (const [place, text] of texts.entries()) {
        await pause(gapsMs[place] ?? 0);
        while (!window.scripted.isListening()) await pause(5);
        report("said");
        window.scripted.say([text], confidence);
      }
    },
  };
}
