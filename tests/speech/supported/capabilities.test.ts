import { afterEach, expect, it, vi } from "vitest";
import { probeCapabilities } from "../../../src/speech/capabilities.ts";
import { FakeRecognition } from "../fake-recognition.ts";

afterEach(() => vi.unstubAllGlobals());

it("finds all that the browser offers without starting or asking for any of it", async () => {
  const never = vi.fn(() => {
    throw new Error("nothing may be started");
  });
  class Recognition extends FakeRecognition {
    static available = async () => "available" as const;
    static install = never;
    override start = never;
  }
  vi.stubGlobal("SpeechRecognition", Recognition);
  vi.stubGlobal("speechSynthesis", { speak: never });
  vi.stubGlobal("SpeechSynthesisUtterance", never);
  vi.stubGlobal("AudioContext", never);
  vi.stubGlobal("navigator", {
    wakeLock: { request: never },
    mediaDevices: { getUserMedia: never },
  });
  expect(await probeCapabilities()).toEqual({
    recognition: true,
    onDevice: { lang: "en-GB", status: "available" },
    synthesis: true,
    tones: true,
    wakeLock: true,
    microphone: true,
  });
  expect(never).not.toHaveBeenCalled();
});
