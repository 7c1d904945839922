import type { WebRecognition } from "../../src/speech/web-speech-types.ts";

/** What every stand-in for the browser's recognition has before it is started. */
export abstract class SilentRecognition implements WebRecognition {
  lang = "";
  continuous = false;
  interimResults = false;
  maxAlternatives = 1;
  onaudiostart: WebRecognition["onaudiostart"] = null;
  onsoundstart: WebRecognition["onsoundstart"] = null;
  onspeechstart: WebRecognition["onspeechstart"] = null;
  onresult: WebRecognition["onresult"] = null;
  onerror: WebRecognition["onerror"] = null;
  onend: WebRecognition["onend"] = null;

  abstract start(): void;
  abstract stop(): void;
  abstract abort(): void;
}
