import { describe, expect, it } from "vitest";
import { type Answer, Talkback, type TalkbackLevel } from "../../src/speech/talkback.ts";
import type { Outcome } from "../../src/speech/tones.ts";
import { FakeClock } from "./fake-clock.ts";

const TONE_MS = 300;

/** A voice that speaks until told that it has finished. */
class FakeVoice {
  readonly said: string[] = [];
  finish: () => void = () => {};
  cancelled = 0;
  unlocked = 0;

  unlock = () => void this.unlocked++;
  cancel = () => void this.cancelled++;
  say = (text: string, done: () => void) => {
    this.said.push(text);
    this.finish = done;
  };
}

function talking(level: TalkbackLevel, options: { voiceless?: boolean; toneless?: boolean } = {}) {
  const clock = new FakeClock();
  const voice = new FakeVoice();
  const tones: Outcome[] = [];
  const halfDuplex: string[] = [];
  const talkback = new Talkback({
    tones: {
      unlock: () => {},
      play: (outcome) => {
        tones.push(outcome);
        return options.toneless ? 0 : TONE_MS;
      },
    },
    voice: options.voiceless ? undefined : voice,
    level,
    clock,
    hold: () => halfDuplex.push("hold"),
    release: () => halfDuplex.push("release"),
  });
  return { clock, voice, tones, halfDuplex, talkback };
}

const logged = (words: string): Answer => ({ outcome: "logged", short: words, full: `${words}.` });
const warning: Answer = { outcome: "warning", short: "net", full: "Net three is nearly full." };

describe("levels", () => {
  it.each([
    ["tones", []],
    ["short", ["two pounds"]],
    ["full", ["two pounds."]],
  ] as const)("at %s says %j", (level, said) => {
    const { clock, voice, tones, talkback } = talking(level);
    talkback.answer(logged("two pounds"));
    clock.advance(TONE_MS);
    expect(tones).toEqual(["logged"]);
    expect(voice.said).toEqual(said);
  });

  it("answers a question and warns in words even at the level of tones", () => {
    const { clock, voice, talkback } = talking("tones");
    talkback.answer({ asked: true, short: "nine fish", full: "Nine fish so far." });
    voice.finish();
    talkback.answer(warning);
    clock.advance(TONE_MS);
    expect(voice.said).toEqual(["nine fish", "net"]);
  });
});

describe("the queue", () => {
  it("holds the ears from before the words until after the last", () => {
    const { clock, voice, halfDuplex, talkback } = talking("short");
    talkback.answer(logged("two pounds"));
    talkback.answer(warning);
    expect(halfDuplex).toEqual(["hold"]);
    expect(voice.said).toEqual([]);
    clock.advance(TONE_MS);
    voice.finish();
    expect(halfDuplex).toEqual(["hold"]);
    voice.finish();
    expect(halfDuplex).toEqual(["hold", "release"]);
    expect(clock.pending).toBe(0);
  });

  it("holds the ears anew for what is said later", () => {
    const { voice, halfDuplex, talkback } = talking("short", { toneless: true });
    for (const words of ["one pound", "two pounds"]) {
      talkback.answer(logged(words));
      voice.finish();
    }
    expect(halfDuplex).toEqual(["hold", "release", "hold", "release"]);
  });

  it("does not hold the ears for a tone alone", () => {
    const { halfDuplex, talkback } = talking("tones");
    talkback.answer(logged("two pounds"));
    expect(halfDuplex).toEqual([]);
  });

  it("cuts a stale answer short for the newest", () => {
    const { clock, voice, talkback } = talking("short", { toneless: true });
    talkback.answer(logged("one pound"));
    const stale = voice.finish;
    talkback.answer(logged("two pounds"));
    expect(voice.cancelled).toBe(1);
    expect(voice.said).toEqual(["one pound", "two pounds"]);
    clock.advance(10);
    expect(stale).not.toBe(voice.finish);
  });

  it("never cuts or drops a warning, and says it before the answers that wait", () => {
    const { voice, talkback } = talking("short", { toneless: true });
    talkback.answer(warning);
    talkback.answer(logged("one pound"));
    talkback.answer({ ...warning, short: "lash" });
    talkback.answer(logged("two pounds"));
    expect(voice.cancelled).toBe(0);
    voice.finish();
    voice.finish();
    voice.finish();
    expect(voice.said).toEqual(["net", "lash", "two pounds"]);
  });

  it("lets an answer be finished before the warning that came with it", () => {
    const { voice, talkback } = talking("short", { toneless: true });
    talkback.answer(logged("two pounds"));
    talkback.answer(warning);
    expect(voice.cancelled).toBe(0);
    voice.finish();
    expect(voice.said).toEqual(["two pounds", "net"]);
  });
});

it("gives tones alone where there is no voice", () => {
  const { clock, tones, halfDuplex, talkback } = talking("full", { voiceless: true });
  talkback.answer(logged("two pounds"));
  clock.advance(60_000);
  expect(tones).toEqual(["logged"]);
  expect(halfDuplex).toEqual([]);
});
