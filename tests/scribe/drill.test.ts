import { beforeEach, describe, expect, it } from "vitest";
import { accepts } from "../../grammar/fsg/automaton.ts";
import { compileGrammar } from "../../grammar/fsg/compile.ts";
import { heardGrammar } from "../../grammar/fsg/heard-grammar.ts";
import { createReader } from "../../grammar/read.ts";
import { CHAT_S, Drill, type DrillEars, QUIET_S } from "../../src/scribe/drill.ts";
import {
  limitsOf,
  type Manner,
  USUAL_VOICE,
  type VoiceChoice,
} from "../../src/speech/offline/suit.ts";
import type { RecogniserEars, Utterance } from "../../src/speech/recogniser.ts";
import { DRILL_PHRASES } from "../../src/words/drill.ts";
import { FakeClock } from "../speech/fake-clock.ts";

const reader = createReader();

describe("the drill's phrases", () => {
  const heard = compileGrammar(heardGrammar());

  it.each(DRILL_PHRASES)("%s can be heard, and is logged", (phrase) => {
    expect(accepts(heard, phrase.split(" "))).toBe(true);
    expect(reader.read([phrase]).verdict).toBe("log");
  });

  it("are twenty, each once", () => {
    expect(new Set(DRILL_PHRASES).size).toBe(20);
  });
});

/** Ears to which a voice is clear in one accent, and refused in the others. */
class ScriptedEars implements DrillEars {
  told: RecogniserEars | undefined;
  suits: { voice?: VoiceChoice; withSound?: boolean }[] = [];
  heardIn: VoiceChoice["accent"] = "northern";
  /** Where set, the warp at which the voice is clear in any accent. */
  heardAt: number | undefined;
  tried: Manner[] = [];
  #said = new Map<Uint8Array, string>();

  suit(part: { voice?: VoiceChoice; withSound?: boolean }): void {
    this.suits.push(part);
  }

  start(ears: RecogniserEars): void {
    this.told = ears;
    ears.onListening();
  }

  stop(): void {
    this.told?.onEnd();
  }

  abort(): void {
    this.told?.onEnd();
  }

  say(text: string): void {
    const sound = Uint8Array.of(this.#said.size);
    this.#said.set(sound, text);
    const utterance: Utterance = {
      alternatives: [{ text }],
      startedAt: 0,
      endedAt: 1,
      by: "offline",
      sound,
    };
    this.told?.onUtterance(utterance);
  }

  async try(sounds: readonly Uint8Array[], manner: Manner) {
    this.tried.push(manner);
    const isClear =
      this.heardAt === undefined ? manner.accent === this.heardIn : manner.warp === this.heardAt;
    const fit = limitsOf(USUAL_VOICE).refuseBelow + (isClear ? 5 : -1);
    return sounds.map((sound) => ({ text: isClear ? (this.#said.get(sound) ?? "") : "", fit }));
  }
}

describe("the drill", () => {
  let ears: ScriptedEars;
  let clock: FakeClock;
  let restored: number;
  let drill: Drill;

  beforeEach(() => {
    ears = new ScriptedEars();
    clock = new FakeClock();
    restored = 0;
    drill = new Drill({ ears, reader, clock, restore: () => restored++ });
    drill.start();
  });

  const readAll = () => {
    for (const phrase of DRILL_PHRASES) {
      ears.say(phrase);
      drill.next();
    }
  };
  const wait = (seconds: number) => {
    for (let second = 0; second < seconds; second += 1) clock.advance(1000);
  };
  const finish = async () => {
    wait(QUIET_S);
    ears.say("that was a lovely fish");
    wait(CHAT_S);
    await new Promise((done) => setTimeout(done));
  };

  it("shows one phrase after the other, and what was heard of each", () => {
    expect(drill.state.value).toEqual({ is: "reading", index: 0, phrase: DRILL_PHRASES[0] });
    ears.say("carp for pounds");
    expect(drill.state.value).toMatchObject({ index: 0, heard: "carp for pounds" });
    drill.next();
    expect(drill.state.value).toMatchObject({ index: 1, phrase: DRILL_PHRASES[1] });
  });

  it("asks for everything and its sound while it lasts, and puts the ears back", async () => {
    expect(ears.suits).toEqual([{ voice: expect.anything(), withSound: true }]);
    expect(ears.suits[0]?.voice?.shift).toBe(-Infinity);
    readAll();
    await finish();
    expect(restored).toBe(1);
  });

  it("counts the quiet, then the chat", () => {
    readAll();
    expect(drill.state.value).toEqual({ is: "quiet", seconds: QUIET_S });
    wait(1);
    expect(drill.state.value).toEqual({ is: "quiet", seconds: QUIET_S - 1 });
    wait(QUIET_S - 1);
    expect(drill.state.value).toEqual({ is: "chat", seconds: CHAT_S });
  });

  it("chooses the accent that hears the voice, and shows before and after", async () => {
    readAll();
    await finish();
    const state = drill.state.value;
    if (state.is !== "done") throw new Error(state.is);
    expect(state.outcome.choice.accent).toBe("northern");
    expect(state.outcome.right).toEqual({ before: 0, after: 20 });
    expect(state.outcome.talk).toEqual({ before: 0, after: 0, of: 1 });
  });

  it("tries every warp, and the accents at the best", async () => {
    ears.heardAt = 0.8;
    readAll();
    await finish();
    const state = drill.state.value;
    if (state.is !== "done") throw new Error(state.is);
    expect(state.outcome.choice).toMatchObject({ accent: USUAL_VOICE.accent, warp: 0.8 });
    expect(
      ears.tried.filter(({ accent }) => accent !== USUAL_VOICE.accent).map(({ warp }) => warp),
    ).toEqual([0.8, 0.8]);
  });

  it("keeps the last try at a phrase, and forgets all when told", async () => {
    ears.say("lost one");
    ears.say(DRILL_PHRASES[0] as string);
    expect(drill.recordings.get(DRILL_PHRASES[0] as string)).toEqual(Uint8Array.of(1));
    expect(drill.recordings.size).toBe(1);
    drill.forget();
    expect(drill.recordings.size).toBe(0);
  });

  it("says so when the ears fail, and puts them back", () => {
    ears.told?.onTrouble({ reason: "no-microphone", detail: "gone" });
    expect(drill.state.value).toMatchObject({ is: "failed", trouble: { reason: "no-microphone" } });
    expect(restored).toBe(1);
  });

  it("left while it tries what suits, it tries no more, and troubles nobody", async () => {
    readAll();
    let fail = (_: Error) => {};
    ears.try = (_, manner) => {
      ears.tried.push(manner);
      return new Promise((_, failing) => {
        fail = failing;
      });
    };
    wait(QUIET_S + CHAT_S);
    drill.stop();
    fail(new Error("the worker was let go"));
    await new Promise((done) => setTimeout(done));
    expect(drill.state.value).toEqual({ is: "ready" });
    expect([ears.tried.length, restored]).toEqual([1, 1]);
  });

  it("left between two tries, it tries no more", async () => {
    readAll();
    const trying = ears.try.bind(ears);
    ears.try = async (sounds, manner) => {
      const tried = await trying(sounds, manner);
      drill.stop();
      return tried;
    };
    await finish();
    expect(drill.state.value).toEqual({ is: "ready" });
    expect([ears.tried.length, restored]).toEqual([1, 1]);
  });

  it("can be left at any time", () => {
    drill.stop();
    expect(drill.state.value).toEqual({ is: "ready" });
    expect(restored).toBe(1);
  });
});
