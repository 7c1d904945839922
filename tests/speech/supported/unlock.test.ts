import { afterEach, expect, it, vi } from "vitest";
import { Talkback } from "../../../src/speech/talkback.ts";
import { FakeClock } from "../fake-clock.ts";

afterEach(() => vi.unstubAllGlobals());

it("unlocks tones and voice, and tells the browser that both play and record are wanted", () => {
  const audioSession = { type: "auto" };
  vi.stubGlobal("navigator", { audioSession });
  const unlocked: string[] = [];
  const talkback = new Talkback({
    tones: { unlock: () => unlocked.push("tones"), play: () => 0 },
    voice: { unlock: () => unlocked.push("voice"), say: () => {}, cancel: () => {} },
    level: "short",
    clock: new FakeClock(),
    hold: () => {},
    release: () => {},
  });
  talkback.unlock();
  expect(unlocked).toEqual(["tones", "voice"]);
  expect(audioSession.type).toBe("play-and-record");
});
