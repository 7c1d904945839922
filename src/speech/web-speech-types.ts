/**
 * The part of the Web Speech API that is used here, and where a browser keeps it.
 * Source: the Web Speech API draft (WebAudio/web-speech-api, index.bs, 2026-05). TypeScript's own
 * DOM library has the events but not the recogniser, as too few browsers carry it.
 */

export interface WebAlternative {
  readonly transcript: string;
  readonly confidence: number;
}

export interface WebResult extends ArrayLike<WebAlternative> {
  readonly isFinal: boolean;
}

export type WebResultList = ArrayLike<WebResult>;

export interface WebRecognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally?: boolean;
  phrases?: WebPhrase[];
  onaudiostart: (() => void) | null;
  onsoundstart: (() => void) | null;
  onspeechstart: (() => void) | null;
  onresult: ((event: { readonly results: WebResultList }) => void) | null;
  onerror: ((event: { readonly error: string; readonly message?: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
  abort(): void;
}

export interface WebPhrase {
  readonly phrase: string;
  readonly boost: number;
}

export type Availability = "unavailable" | "downloadable" | "downloading" | "available";

export interface LocalOptions {
  langs: string[];
  processLocally: true;
}

export interface WebRecognitionConstructor {
  new (): WebRecognition;
  available?(options: LocalOptions): Promise<Availability>;
  install?(options: LocalOptions): Promise<boolean>;
}

/** What a browser offers for recognition; the phrase class is there only where phrases can be given. */
export interface WebSpeech {
  Recognition: WebRecognitionConstructor;
  Phrase?: new (phrase: string, boost: number) => WebPhrase;
}

interface Scope {
  SpeechRecognition?: WebRecognitionConstructor;
  webkitSpeechRecognition?: WebRecognitionConstructor;
  SpeechRecognitionPhrase?: NonNullable<WebSpeech["Phrase"]>;
}

/** The browser's recognition, prefixed or not, or undefined where it has none. */
export function findWebSpeech(scope: object = globalThis): WebSpeech | undefined {
  const browser = scope as Scope;
  const Recognition = browser.SpeechRecognition ?? browser.webkitSpeechRecognition;
  if (!Recognition) return undefined;
  const Phrase = browser.SpeechRecognitionPhrase;
  return Phrase ? { Recognition, Phrase } : { Recognition };
}
