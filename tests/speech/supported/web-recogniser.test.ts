/** One test for each known behaviour of a browser, played by a scripted recogniser. */

import { afterEach, describe, expect, it, vi } from "vitest";
import { hearsContinuously, WebRecogniser } from "../../../src/speech/web-recogniser.ts";
import { LONGEST_LEAD_MS } from "../../../src/speech/web-results.ts";
import {
  END_LIMIT_MS,
  FIRST_START_LIMIT_MS,
  INTERIM_STILL_MS,
  QUIET_LIMIT_MS,
  START_LIMIT_MS,
} from "../../../src/speech/web-run.ts";
import { findWebSpeech } from "../../../src/speech/web-speech-types.ts";
import { FakeClock } from "../fake-clock.ts";
import { FakeEars } from "../fake-ears.ts";
import {
  FakeLocalRecognition,
  FakePhrase,
  FakeRecognition,
  fakeBrowser,
  final,
  type Script,
} from "../fake-recognition.ts";
import * as quirks from "../quirks.ts";

interface Setting {
  continuous?: boolean;
  local?: boolean;
  global?: string;
}

function browserPlaying(scripts: Script | Script[], setting: Setting = {}) {
  const clock = new FakeClock();
  const Kind = setting.local ? FakeLocalRecognition : FakeRecognition;
  const { Recognition, made } = fakeBrowser(clock, [scripts].flat(), Kind);
  vi.stubGlobal("SpeechRecognition", undefined);
  vi.stubGlobal("webkitSpeechRecognition", undefined);
  vi.stubGlobal(setting.global ?? "SpeechRecognition", Recognition);
  if (setting.local) vi.stubGlobal("SpeechRecognitionPhrase", FakePhrase);
  const speech = findWebSpeech();
  if (!speech) throw new Error("the browser's recognition was not found");
  const ears = new FakeEars();
  const recogniser = new WebRecogniser(speech, {
    continuous: setting.continuous ?? true,
    clock,
    onLocalRefused: () => ears.told.push("no longer on the device"),
  });
  return { clock, made, recogniser, ears };
}

function started(scripts: Script | Script[], setting?: Setting) {
  const browser = browserPlaying(scripts, setting);
  browser.recogniser.start(browser.ears);
  return browser;
}

afterEach(() => vi.unstubAllGlobals());

describe("a plain run", () => {
  it("is set up for British English, interim results and five alternatives", () => {
    const { made } = started(quirks.plain);
    expect(made[0]).toMatchObject({
      lang: "en-GB",
      interimResults: true,
      maxAlternatives: 5,
      continuous: true,
    });
  });

  it.each(["audio", "sound", "speech"] as const)(
    "hears from the first %s on, whichever the browser tells of",
    (what) => {
      const { clock, ears } = started({
        name: what,
        steps: [[100, (recognition) => recognition[`on${what}start`]?.()]],
      });
      clock.advance(200);
      expect(ears.told).toEqual(["listening"]);
    },
  );

  it("is found under its prefixed name", () => {
    const { clock, ears } = started(quirks.plain, { global: "webkitSpeechRecognition" });
    clock.advance(3_000);
    expect(ears.said).toEqual(["fish two pounds"]);
  });

  it("reports interims, then the final with its alternatives and times", () => {
    const { clock, ears } = started(quirks.plain);
    const begin = clock.now();
    clock.advance(3_000);
    expect(ears.interims).toEqual(["fish", "fish two pounds"]);
    expect(ears.utterances).toEqual([
      {
        alternatives: [
          { text: "fish two pounds", confidence: 0.9 },
          { text: "fish to pounds" },
          { text: "dish two pounds" },
        ],
        startedAt: begin + 1_000,
        endedAt: begin + 1_600,
        by: "web",
      },
    ]);
  });

  it("ends once after stop, and leaves no timer behind", () => {
    const { clock, ears, made, recogniser } = started(quirks.plain);
    clock.advance(3_000);
    recogniser.stop();
    recogniser.stop();
    clock.advance(200_000);
    made[0]?.onresult?.({ results: [final("fish three pounds")] });
    expect(ears.told).toEqual(["listening", "said: fish two pounds", "end"]);
    expect(clock.pending).toBe(0);
  });

  it("hands over the words begun when it is stopped, and none when it is aborted", () => {
    const stopped = started(quirks.plain);
    stopped.clock.advance(1_700);
    stopped.recogniser.stop();
    stopped.clock.advance(1_000);
    expect(stopped.ears.said).toEqual(["fish two pounds"]);
    expect(stopped.clock.pending).toBe(0);

    const aborted = started(quirks.plain);
    aborted.clock.advance(1_700);
    aborted.recogniser.abort();
    aborted.recogniser.stop();
    aborted.made[0]?.onresult?.({ results: [final("fish two pounds")] });
    aborted.clock.advance(1_000);
    expect(aborted.ears.told).toEqual(["listening", "end"]);
  });

  it("can be started again as soon as it says that it ended", () => {
    const { clock, ears, recogniser } = browserPlaying([quirks.silenceEnds, quirks.plain]);
    const next = new FakeEars();
    recogniser.start({ ...ears, onEnd: () => recogniser.start(next) });
    clock.advance(20_000);
    expect(next.told).toEqual(["listening", "said: fish two pounds"]);
  });

  it("refuses a second start while it hears", () => {
    const { recogniser, made } = started(quirks.plain);
    const second = new FakeEars();
    recogniser.start(second);
    expect(second.told).toEqual(["trouble: busy", "end"]);
    expect(made).toHaveLength(1);
  });
});

describe("runs that end by themselves", () => {
  it.each([
    [quirks.silenceEnds, ["listening", "end"]],
    [quirks.noSpeech, ["listening", "trouble: no-speech", "end"]],
    [quirks.brokenOff, ["listening", "trouble: network", "said: lost one", "end"]],
    [quirks.failing("audio-capture"), ["trouble: no-microphone", "end"]],
    [quirks.failing("not-allowed"), ["trouble: not-allowed", "end"]],
    [quirks.failing("service-not-allowed"), ["trouble: service-off", "end"]],
    [quirks.failing("aborted"), ["trouble: aborted", "end"]],
    [quirks.failing("never-heard-of"), ["trouble: stalled", "end"]],
    [quirks.invalidState, ["trouble: busy", "end"]],
  ])("$name", (script, told) => {
    const { clock, ears } = started(script);
    clock.advance(120_000);
    expect(ears.told).toEqual(told);
    expect(clock.pending).toBe(0);
  });
});

it("a start that throws ends at once", () => {
  expect(started(quirks.invalidState).ears.told).toEqual(["trouble: busy", "end"]);
});

describe("runs that forget to end", () => {
  it("ends a run whose error brings no end", () => {
    const { clock, ears } = started(quirks.languageWithoutEnd);
    clock.advance(50 + END_LIMIT_MS - 1);
    expect(ears.told).toEqual(["trouble: language"]);
    clock.advance(1);
    expect(ears.told).toEqual(["trouble: language", "end"]);
  });

  it("waits long at the first start, while leave may be being asked for", () => {
    const { clock, ears } = started(quirks.deadStart);
    clock.advance(FIRST_START_LIMIT_MS - 1);
    expect(ears.told).toEqual([]);
    clock.advance(1 + END_LIMIT_MS);
    expect(ears.told).toEqual(["trouble: stalled", "end"]);
  });

  it("waits less once the microphone has worked", () => {
    const { clock, ears, recogniser } = started([quirks.silenceEnds, quirks.deadStart]);
    clock.advance(16_000);
    recogniser.start(ears);
    clock.advance(START_LIMIT_MS + END_LIMIT_MS);
    expect(ears.told).toEqual(["listening", "end", "trouble: stalled", "end"]);
    expect(clock.pending).toBe(0);
  });

  it("renews a run that has gone deaf", () => {
    const { clock, ears } = started(quirks.deafRun);
    clock.advance(100 + QUIET_LIMIT_MS + END_LIMIT_MS);
    expect(ears.told).toEqual(["listening", "trouble: stalled", "end"]);
  });

  it("does not renew one that goes on bringing results", () => {
    const { clock, ears, made } = started(quirks.talksOn);
    clock.advance(120_000 + QUIET_LIMIT_MS - 1);
    expect(ears.told).toEqual(["listening", "said: bite", "said: missed it", "said: feeding"]);
    expect(made[0]?.started).toBe(true);
  });

  it("ends a run whose stop brings no end, and hears nothing more from it", () => {
    const { clock, ears, recogniser, made } = started(quirks.stopWithoutEnd);
    clock.advance(3_000);
    recogniser.stop();
    const cutOff = made[0] && vi.spyOn(made[0], "abort");
    clock.advance(END_LIMIT_MS);
    expect(ears.told.at(-1)).toBe("end");
    // Whatever still runs in the browser would keep the next one from the microphone.
    expect(cutOff).toHaveBeenCalledOnce();
    const told = [...ears.told];
    made[0]?.onend?.();
    made[0]?.onresult?.({ results: [] });
    expect(ears.told).toEqual(told);
  });

  it("waits no longer for the end because words came after the stop", () => {
    const { clock, ears, recogniser } = started(quirks.wordsAfterStop);
    clock.advance(1_000);
    recogniser.stop();
    clock.advance(END_LIMIT_MS);
    const told = ["listening", "said: fish two pounds", "trouble: stalled", "end"];
    expect(ears.told).toEqual(told);
  });
});

describe("finals that repeat or never come", () => {
  it("takes partials marked final for one utterance", () => {
    const { clock, ears } = started(quirks.partialsMarkedFinal, { continuous: false });
    clock.advance(3_000);
    expect(ears.told).toEqual(["listening", "said: fish two pounds", "end"]);
    expect(ears.utterances[0]?.alternatives).toEqual([
      { text: "fish two pounds", confidence: 0.87 },
    ]);
  });

  it("takes cumulative finals for one utterance, without a confidence of 0", () => {
    const { clock, ears } = started(quirks.cumulativeFinals, { continuous: false });
    clock.advance(3_000);
    expect(ears.utterances.map(({ alternatives }) => alternatives)).toEqual([
      [{ text: "fish two pounds" }],
    ]);
  });

  it("drops results replayed from the first", () => {
    const { clock, ears } = started(quirks.replayed);
    clock.advance(10_000);
    expect(ears.said).toEqual(["bite", "missed it"]);
  });

  it("drops a final repeated as a further result, but not the words added to it", () => {
    const { clock, ears } = started(quirks.repeatedAsNew);
    clock.advance(10_000);
    expect(ears.said).toEqual(["fish two pounds", "feeding"]);
  });

  it("keeps the same words said twice, each with its own beginning", () => {
    const { clock, ears } = started(quirks.saidTwice);
    const begin = clock.now();
    clock.advance(10_000);
    expect(ears.said).toEqual(["bite", "bite"]);
    expect(ears.utterances.map(({ startedAt }) => startedAt - begin)).toEqual([700, 5_000]);
  });

  it("takes words that stand still as said, and ends the run", () => {
    const { clock, ears } = started(quirks.neverFinal);
    const begin = clock.now();
    clock.advance(1_200 + INTERIM_STILL_MS - 1);
    expect(ears.said).toEqual([]);
    clock.advance(1);
    expect(ears.said).toEqual(["lost one"]);
    expect(ears.utterances[0]?.endedAt).toBe(begin + 1_200);
    clock.advance(1_000);
    expect(ears.told.at(-1)).toBe("end");
  });

  it("drops a late final that only words the same otherwise", () => {
    const { clock, ears } = started(quirks.finalComesLate);
    clock.advance(10_000);
    expect(ears.said).toEqual(["lost one"]);
  });

  it("hands over what a late final adds", () => {
    const { clock, ears } = started(quirks.wordsComeLate);
    clock.advance(10_000);
    expect(ears.said).toEqual(["lost one", "ten centimetres deeper"]);
  });

  it("hands over what comes later still, each piece once", () => {
    const { clock, ears } = started(quirks.wordsComeLater);
    clock.advance(10_000);
    expect(ears.said).toEqual(["lost one", "ten centimetres", "deeper"]);
  });

  it("joins an interim that comes in pieces, and takes it once", () => {
    const { clock, ears } = started(quirks.interimInPieces);
    clock.advance(10_000);
    expect(ears.said).toEqual(["fish two pounds"]);
  });

  it("does not count wind as the beginning of the words", () => {
    const { clock, ears } = started(quirks.windBeforeWords);
    const begin = clock.now();
    clock.advance(20_000);
    expect(ears.utterances[0]?.startedAt).toBe(begin + 14_000 - LONGEST_LEAD_MS);
  });
});

describe("hearing on the device", () => {
  it("gives phrases only to a run that was set to the device first", () => {
    const { recogniser, ears, made, clock } = browserPlaying(quirks.silenceEnds, { local: true });
    recogniser.expect(["skimmer", "two pounds"]);
    recogniser.start(ears);
    clock.advance(20_000);
    recogniser.hearLocally("en-US");
    recogniser.start(ears);
    expect(made[0]).toMatchObject({ lang: "en-GB", processLocally: false, phrases: [] });
    expect(made[1]).toMatchObject({
      lang: "en-US",
      processLocally: true,
      phrases: [{ phrase: "skimmer" }, { phrase: "two pounds" }],
    });
  });

  it("leaves a browser alone that knows no device or phrases", () => {
    const { recogniser, ears, made } = browserPlaying(quirks.plain);
    recogniser.expect(["skimmer"]);
    recogniser.hearLocally("en-US");
    recogniser.start(ears);
    expect(made[0]).not.toHaveProperty("phrases");
    expect(made[0]).not.toHaveProperty("processLocally");
  });

  it("goes without phrases once they were refused", () => {
    const { recogniser, ears, made, clock } = browserPlaying(
      [quirks.phrasesRefused, quirks.plain],
      { local: true },
    );
    recogniser.expect(["skimmer"]);
    recogniser.hearLocally("en-US");
    recogniser.start(ears);
    clock.advance(100);
    expect(ears.told).toEqual(["end"]);
    recogniser.start(ears);
    expect(made[1]).toMatchObject({ processLocally: true, phrases: [] });
  });

  it("goes back to the service once the device's language was refused", () => {
    const { recogniser, ears, made, clock } = browserPlaying(
      [quirks.languageWithoutEnd, quirks.plain],
      { local: true },
    );
    recogniser.hearLocally("en-US");
    recogniser.start(ears);
    clock.advance(50 + END_LIMIT_MS);
    expect(ears.told).toEqual(["no longer on the device", "end"]);
    recogniser.start(ears);
    expect(made[1]).toMatchObject({ lang: "en-GB", processLocally: false });
    clock.advance(20_000);
    expect(ears.told.filter((one) => one === "no longer on the device")).toHaveLength(1);
  });
});

describe("hearsContinuously", () => {
  it.each([
    ["Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36 Mobile", 5, false],
    ["Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36", 5, false],
    ["Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36", 0, true],
    ["Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36", 10, true],
    ["Mozilla/5.0 (iPhone; CPU iPhone OS 18_4 like Mac OS X)", 5, true],
  ])("%s with %i touch points: %s", (userAgent, maxTouchPoints, continuous) => {
    expect(hearsContinuously({ userAgent, maxTouchPoints })).toBe(continuous);
  });
});
