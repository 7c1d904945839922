/** A browser that offers nothing: the room still stands, and says what is missing. */

import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { probeCapabilities } from "../../../src/speech/capabilities.ts";
import { Listener } from "../../../src/speech/listener.ts";
import type { ListenerState } from "../../../src/speech/listener-state.ts";
import { Talkback } from "../../../src/speech/talkback.ts";
import { TonePlayer } from "../../../src/speech/tone-player.ts";
import { findSynthesis } from "../../../src/speech/voice.ts";
import { ScreenWakeLock } from "../../../src/speech/wake-lock.ts";
import { findWebSpeech } from "../../../src/speech/web-speech-types.ts";
import { FakeClock } from "../fake-clock.ts";
import { FakePage } from "../fake-recogniser.ts";

const ABSENT = [
  "SpeechRecognition",
  "webkitSpeechRecognition",
  "SpeechRecognitionPhrase",
  "speechSynthesis",
  "SpeechSynthesisUtterance",
  "AudioContext",
  "navigator",
];

beforeEach(() => {
  for (const name of ABSENT) vi.stubGlobal(name, undefined);
});
afterEach(() => vi.unstubAllGlobals());

it("finds nothing, and says so of each", async () => {
  expect(findWebSpeech()).toBeUndefined();
  expect(findSynthesis()).toBeUndefined();
  expect(await probeCapabilities()).toEqual({
    recognition: false,
    onDevice: undefined,
    synthesis: false,
    tones: false,
    wakeLock: false,
    microphone: false,
  });
});

it("has a listener that says it is unavailable", () => {
  const states: ListenerState[] = [];
  const clock = new FakeClock();
  const listener = new Listener({
    recognisers: [],
    clock,
    page: new FakePage(),
    events: {
      onState: (state) => states.push(state),
      onInterim: () => {},
      onUtterance: () => {},
      onTrouble: () => {},
    },
  });
  listener.start();
  clock.advance(60_000);
  listener.stop();
  expect(states).toMatchObject([
    { is: "unavailable", trouble: { reason: "unsupported" } },
    { is: "off" },
  ]);
  expect(clock.pending).toBe(0);
});

it("has a talkback that stays silent and never holds the ears", () => {
  const calls: string[] = [];
  const tones = new TonePlayer();
  const talkback = new Talkback({
    tones,
    level: "full",
    clock: new FakeClock(),
    hold: () => calls.push("hold"),
    release: () => calls.push("release"),
  });
  talkback.unlock();
  talkback.answer({ outcome: "logged", short: "two pounds", full: "Fish, two pounds." });
  expect(tones.play("logged")).toBe(0);
  expect(calls).toEqual([]);
});

it("has a wake lock that says it is unsupported", () => {
  const document = new EventTarget() as Document;
  const lock = new ScreenWakeLock({ onState: () => {}, wakeLock: undefined, document });
  lock.keep();
  expect(lock.state).toBe("unsupported");
  lock.letGo();
  expect(lock.state).toBe("off");
});
