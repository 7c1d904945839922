import { describe, expect, it } from "vitest";
import {
  preferredVoice,
  VOICE_LIMIT_MS,
  VOICE_LIMIT_PER_LETTER_MS,
  Voice,
} from "../../src/speech/voice.ts";
import { FakeClock } from "./fake-clock.ts";

class FakeUtterance {
  text: string;
  lang = "";
  volume = 1;
  voice: SpeechSynthesisVoice | null = null;
  onend: (() => void) | null = null;
  onerror: (() => void) | null = null;

  constructor(text: string) {
    this.text = text;
  }
}

function aVoice(name: string, lang: string, localService: boolean) {
  return { name, lang, localService, default: false, voiceURI: name } as SpeechSynthesisVoice;
}

function speaking(voices: SpeechSynthesisVoice[] = [], { tells = true } = {}) {
  const clock = new FakeClock();
  const spoken: FakeUtterance[] = [];
  const silenced: FakeUtterance[] = [];
  /** Reports the end of the utterance cut short, as most browsers do. */
  const cancel = () => {
    silenced.push(...spoken.slice(-1));
    if (tells) spoken.at(-1)?.onerror?.();
  };
  const synth = {
    getVoices: () => voices,
    speak: (utterance: FakeUtterance) => spoken.push(utterance),
    cancel,
  };
  const voice = new Voice(
    {
      synth: synth as unknown as SpeechSynthesis,
      Utterance: FakeUtterance as unknown as typeof SpeechSynthesisUtterance,
    },
    clock,
  );
  return { clock, spoken, silenced, voice };
}

describe("Voice", () => {
  it("reports the end once", () => {
    const { clock, spoken, voice } = speaking();
    let ends = 0;
    voice.say("two pounds", () => ends++);
    spoken[0]?.onend?.();
    spoken[0]?.onend?.();
    clock.advance(60_000);
    expect(ends).toBe(1);
    expect(clock.pending).toBe(0);
  });

  it("counts as done when the end never comes, and lets the next be said", () => {
    const { clock, spoken, voice } = speaking();
    let ends = 0;
    voice.say("bite", () => {
      ends++;
      voice.say("lost one", () => ends++);
    });
    clock.advance(VOICE_LIMIT_MS + 4 * VOICE_LIMIT_PER_LETTER_MS - 1);
    expect(ends).toBe(0);
    clock.advance(1);
    expect(ends).toBe(1);
    spoken[1]?.onend?.();
    expect(ends).toBe(2);
  });

  it("is silenced when its end never comes, though the browser tells nothing of that either", () => {
    const { clock, spoken, silenced, voice } = speaking([], { tells: false });
    let ends = 0;
    voice.say("bite", () => ends++);
    clock.advance(VOICE_LIMIT_MS + 4 * VOICE_LIMIT_PER_LETTER_MS);
    expect([ends, silenced]).toEqual([1, spoken]);
  });

  it("is at its end when it fails", () => {
    const { clock, spoken, voice } = speaking();
    let ends = 0;
    voice.say("bite", () => ends++);
    spoken[0]?.onerror?.();
    expect([ends, clock.pending]).toEqual([1, 0]);
  });

  it("is silenced, and reports no end of what was cut short", () => {
    const { clock, spoken, silenced, voice } = speaking();
    let ends = 0;
    voice.cancel();
    voice.say("two pounds", () => ends++);
    voice.cancel();
    spoken[0]?.onend?.();
    clock.advance(60_000);
    expect([ends, silenced]).toEqual([0, spoken]);
  });

  it("speaks with the preferred voice, in its language", () => {
    const chosen = aVoice("here", "en_GB", true);
    const { spoken, voice } = speaking([aVoice("away", "en-GB", false), chosen]);
    voice.say("two pounds", () => {});
    expect(spoken[0]).toMatchObject({ voice: chosen, lang: "en_GB" });
  });

  it("is unlocked without a sound", () => {
    const { spoken, voice } = speaking();
    voice.unlock();
    expect(spoken).toMatchObject([{ volume: 0 }]);
  });
});

describe("preferredVoice", () => {
  const german = aVoice("german", "de-DE", true);
  const britishAway = aVoice("british away", "en-GB", false);
  const americanAway = aVoice("american away", "en-US", false);
  const americanHere = aVoice("american here", "en-US", true);
  const britishHere = aVoice("british here", "en-GB", true);

  it.each([
    ["british here", [german, britishAway, americanHere, britishHere]],
    ["american here", [britishAway, americanHere]],
    ["british away", [americanAway, britishAway, german]],
    [undefined, [german]],
  ])("is %s", (name, voices) => {
    expect(preferredVoice(voices)?.name).toBe(name);
  });
});
