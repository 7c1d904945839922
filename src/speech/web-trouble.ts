/** The browser's error codes and exceptions, as troubles. */

import type { Trouble, TroubleReason } from "./recogniser.ts";

/** Source: SpeechRecognitionErrorCode in the Web Speech API draft. */
const REASON_OF_CODE: Readonly<Record<string, TroubleReason>> = {
  "no-speech": "no-speech",
  aborted: "aborted",
  "audio-capture": "no-microphone",
  network: "network",
  "not-allowed": "not-allowed",
  "service-not-allowed": "service-off",
  "language-not-supported": "language",
};

const REASON_OF_EXCEPTION: Readonly<Record<string, TroubleReason>> = {
  InvalidStateError: "busy",
  NotAllowedError: "not-allowed",
  NotSupportedError: "unsupported",
};

/** A code no draft names is treated as a fault that may pass. */
export function troubleOfError(code: string, message = ""): Trouble {
  return { reason: REASON_OF_CODE[code] ?? "stalled", detail: message || code };
}

export function troubleOfException(thrown: unknown): Trouble {
  const name = thrown instanceof Error ? thrown.name : "";
  return { reason: REASON_OF_EXCEPTION[name] ?? "stalled", detail: String(thrown) };
}
