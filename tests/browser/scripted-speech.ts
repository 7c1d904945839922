/** A browser's recognition and synthesis that a test drives; it goes into the page before the app. */

export interface Scripted {
  isListening(): boolean;
  /** One phrase, best guess first, as Chrome reports it: an interim, then a final. */
  say(alternatives: readonly string[], confidence: number): void;
  fail(error: string): void;
  /** What the phone said aloud. */
  spoken: string[];
}

declare global {
  interface Window {
    scripted: Scripted;
  }
}

/** Whether the browser recognises speech, and says that it can do so on the phone. */
export type SpeechThere = boolean | "on-device";

/** Self-contained, since it is sent to the page as text. */
export function installSpeech(hasSpeech: SpeechThere): void {
  type Result = { isFinal: boolean; length: number; [place: number]: object };

  class Recognition {
    static current: Recognition | undefined;
    static available = hasSpeech === "on-device" ? async () => "available" : undefined;
    processLocally = false;
    results: Result[] = [];
    onaudiostart: (() => void) | null = null;
    onspeechstart: (() => void) | null = null;
    onresult: ((event: { results: Result[] }) => void) | null = null;
    onerror: ((event: { error: string; message: string }) => void) | null = null;
    onend: (() => void) | null = null;

    start(): void {
      setTimeout(() => {
        Recognition.current = this;
        this.onaudiostart?.();
      }, 5);
    }

    stop(): void {
      this.end();
    }

    abort(): void {
      this.end();
    }

    end(): void {
      if (Recognition.current === this) Recognition.current = undefined;
      setTimeout(() => this.onend?.(), 5);
    }

    hear(alternatives: readonly string[], confidence: number): void {
      const report = (isFinal: boolean) => {
        const guesses = alternatives.map((transcript) => ({ transcript, confidence }));
        const result: Result = Object.assign({ isFinal, length: guesses.length }, guesses);
        this.onresult?.({ results: [...this.results, result] });
        if (isFinal) this.results.push(result);
      };
      this.onspeechstart?.();
      report(false);
      report(true);
    }
  }

  class Utterance {
    onend: (() => void) | null = null;
    volume = 1;
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }

  const spoken: string[] = [];
  const speechSynthesis = {
    getVoices: () => [],
    speak(utterance: Utterance) {
      if (utterance.volume > 0) spoken.push(utterance.text);
      setTimeout(() => utterance.onend?.(), 20);
    },
    cancel() {},
  };
  const define = (name: string, value: unknown) =>
    Object.defineProperty(window, name, { value, configurable: true });
  define("SpeechRecognition", hasSpeech ? Recognition : undefined);
  define("webkitSpeechRecognition", undefined);
  define("SpeechSynthesisUtterance", Utterance);
  define("speechSynthesis", speechSynthesis);
  window.scripted = {
    isListening: () => Recognition.current !== undefined,
    say: (alternatives, confidence) => Recognition.current?.hear(alternatives, confidence),
    fail(error) {
      const failing = Recognition.current;
      failing?.onerror?.({ error, message: "" });
      failing?.end();
    },
    spoken,
  };
}
