/**
 * What every pair of ears offers, whether the browser's own or those inside the app. A recogniser
 * hears until it stops or fails; keeping one alive for hours is the listener's work.
 */

export interface Hypothesis {
  text: string;
  /** 0 to 1; absent where none is given. */
  confidence?: number;
}

export type RecogniserKind = "web" | "offline";

/** One thing said, from the first sound to the last. */
export interface Utterance {
  /** Best first, at most five. */
  alternatives: Hypothesis[];
  /** Milliseconds since the epoch. */
  startedAt: number;
  endedAt: number;
  by: RecogniserKind;
  /** Its sound, where that was asked for and can be had: mu-law at 8 kHz. */
  sound?: Uint8Array;
}

export type TroubleReason =
  | "not-allowed"
  | "service-off"
  | "no-microphone"
  | "network"
  | "no-speech"
  | "language"
  | "busy"
  | "aborted"
  | "stalled"
  | "unsupported"
  /** The files of the ears inside the app are not on this device. */
  | "not-kept";

export interface Trouble {
  reason: TroubleReason;
  /** The recogniser's own words, for the log of troubles; never shown alone. */
  detail: string;
}

export interface RecogniserEars {
  /** The recogniser is now really hearing. */
  onListening(): void;
  onInterim(text: string): void;
  onUtterance(utterance: Utterance): void;
  onTrouble(trouble: Trouble): void;
  /** It no longer hears, for whatever reason; always comes, once per start. */
  onEnd(): void;
}

export interface Recogniser {
  readonly kind: RecogniserKind;
  /**
   * Begins to hear. Throws nothing: what goes wrong is told to the ears, perhaps before this
   * returns. Not to be called again before `onEnd`.
   */
  start(ears: RecogniserEars): void;
  /** Ends hearing and still delivers what was said so far. */
  stop(): void;
  /** Ends hearing at once and delivers nothing more. */
  abort(): void;
  /** Words to expect, most telling first. Taken up at the next start. */
  expect(phrases: readonly string[]): void;
}
