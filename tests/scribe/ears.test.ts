// @vitest-environment happy-dom
// @vitest-environment-options {"url": "https://pegs.example/"}
import { signal } from "@preact/signals";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { Ears, type EarsOptions } from "../../src/scribe/ears.ts";
import type { Hearing } from "../../src/scribe/news.ts";
import { systemClock } from "../../src/speech/clock.ts";
import { ECHO_MS } from "../../src/speech/listener.ts";
import type { EarsChoice } from "../../src/speech/ranking.ts";
import { listeningWords } from "../../src/words/listening.ts";
import {
  audio,
  error,
  type FakeRecognition,
  fakeBrowser,
  type Script,
} from "../speech/fake-recognition.ts";
import { plain } from "../speech/quirks.ts";

const HEARS: Script = { name: "hears", steps: [[100, audio]] };
const SWITCHED_OFF: Script = { name: "off", steps: [[100, error("service-not-allowed")]] };

class Said {
  onend: (() => void) | null = null;
  onerror: (() => void) | null = null;
  constructor(readonly text: string) {}
}

let made: FakeRecognition[];
let said: Said[];

beforeEach(() => {
  vi.useFakeTimers();
  said = [];
  const synth = { getVoices: () => [], speak: (one: Said) => said.push(one), cancel: () => {} };
  vi.stubGlobal("speechSynthesis", synth);
  vi.stubGlobal("SpeechSynthesisUtterance", Said);
});

afterEach(() => {
  Reflect.deleteProperty(navigator, "locks");
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

function earsThat(...scripts: Script[]) {
  const browser = fakeBrowser(systemClock, scripts);
  made = browser.made;
  vi.stubGlobal("SpeechRecognition", browser.Recognition);
  const hearing = signal<Hearing>({ is: "off", sendsSound: false });
  const heard: string[] = [];
  const care = { web: signal("none"), offline: signal("impossible") };
  const ears = new Ears({
    hearing,
    interim: signal(""),
    level: "short",
    choice: signal<EarsChoice>("either"),
    care: care as unknown as EarsOptions["care"],
    onUtterance: ({ alternatives }) => heard.push(alternatives[0]?.text ?? ""),
  });
  return { ears, hearing, heard };
}

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);
const areOpen = () => made.some(({ started }) => started);

describe("the ears", () => {
  test("are closed while the phone speaks and a moment after", async () => {
    const { ears, hearing } = earsThat(HEARS);
    await ears.start();
    await pass(5_000);
    expect(hearing.value.is).toBe("listening");
    said.length = 0;
    ears.tell({ short: "nine fish", full: "Nine fish.", asked: true });
    await pass(1_000);
    expect([said.map(({ text }) => text), areOpen(), hearing.value.is]).toEqual([
      ["nine fish"],
      false,
      "held",
    ]);
    said[0]?.onend?.();
    await pass(ECHO_MS - 1);
    expect(areOpen()).toBe(false);
    await pass(1);
    expect(areOpen()).toBe(true);
  });

  test("are held while a kept sound is played, and let go of though that fails", async () => {
    const { ears } = earsThat(HEARS);
    await ears.start();
    await pass(5_000);
    let fail = (_: Error) => {};
    const playing = ears.holdFor(
      () =>
        new Promise((_, failing) => {
          fail = failing;
        }),
    );
    await pass(1_000);
    expect(areOpen()).toBe(false);
    fail(new Error("no sound"));
    await expect(playing).rejects.toThrow("no sound");
    await pass(ECHO_MS);
    expect(areOpen()).toBe(true);
  });

  test("say that nothing is heard any more, and what to do", async () => {
    const { ears, hearing } = earsThat(SWITCHED_OFF);
    await ears.start();
    said.length = 0;
    await pass(5_000);
    said[0]?.onend?.();
    await pass(ECHO_MS);
    expect(hearing.value.is).toBe("refused");
    expect(said.map(({ text }) => text)).toEqual([hearing.value.trouble?.what]);
  });

  test("hand on what is said", async () => {
    const { ears, heard } = earsThat(plain, HEARS);
    await ears.start();
    await pass(5_000);
    expect(heard).toEqual(["fish two pounds"]);
  });

  test("told to stop, let go of the microphone before they say so", async () => {
    const { ears, hearing } = earsThat(HEARS);
    await ears.start();
    await pass(5_000);
    let isFree = false;
    void ears.stop().then(() => {
      isFree = true;
    });
    await pass(0);
    expect([isFree, areOpen()]).toEqual([false, true]);
    await pass(1_000);
    expect([isFree, areOpen(), hearing.value.is]).toEqual([true, false, "off"]);
  });

  test("do not begin once they were told to stop, however late the browser's lock comes", async () => {
    let give = () => {};
    const request = (_: string, __: object, held: (lock: object) => unknown) =>
      new Promise<void>((done) => {
        give = () => void Promise.resolve(held({})).then(() => done());
      });
    Object.defineProperty(navigator, "locks", { value: { request }, configurable: true });
    const { ears, hearing } = earsThat(HEARS);
    const starting = ears.start();
    await pass(0);
    await ears.stop();
    give();
    await starting;
    await pass(1_000);
    expect([made.length, hearing.value.is]).toEqual([0, "off"]);
  });

  test("of another tab are left to it", async () => {
    const request = async (_: string, __: object, held: (lock: null) => unknown) => held(null);
    Object.defineProperty(navigator, "locks", { value: { request }, configurable: true });
    const { ears, hearing } = earsThat(HEARS);
    await ears.start();
    await pass(1_000);
    expect(made).toEqual([]);
    expect(hearing.value).toMatchObject({ is: "refused", trouble: listeningWords.elsewhere });
  });
});
