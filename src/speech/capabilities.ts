/** What this browser offers for hearing and speaking, found out without starting any of it. */

import { type Clock, systemClock } from "./clock.ts";
import { findLocalLanguage, type LocalLanguage } from "./on-device.ts";
import { findSynthesis } from "./voice.ts";
import { findWebSpeech } from "./web-speech-types.ts";

export interface Capabilities {
  /** Offered, which is not yet working: some home-screen apps offer it and refuse. */
  recognition: boolean;
  /** English on the device, ready or to be fetched; undefined where there is none. */
  onDevice: LocalLanguage | undefined;
  synthesis: boolean;
  tones: boolean;
  wakeLock: boolean;
  /** Sound can be had from the microphone, as a recogniser inside the app would need. */
  microphone: boolean;
}

export async function probeCapabilities(
  scope: object = globalThis,
  clock: Clock = systemClock,
): Promise<Capabilities> {
  const { navigator, AudioContext } = scope as Partial<typeof globalThis>;
  const speech = findWebSpeech(scope);
  return {
    recognition: speech !== undefined,
    onDevice: speech && (await findLocalLanguage(speech.Recognition, clock)),
    synthesis: findSynthesis(scope) !== undefined,
    tones: AudioContext !== undefined,
    wakeLock: navigator?.wakeLock !== undefined,
    microphone: navigator?.mediaDevices?.getUserMedia !== undefined,
  };
}
