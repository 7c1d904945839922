import { readdirSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { createReader } from "../../../grammar/read.ts";
import { CHAT_S, Drill, type DrillEars, type Outcome, QUIET_S } from "../../../src/scribe/drill.ts";
import { fromMuLaw, toMuLaw } from "../../../src/speech/offline/mu-law.ts";
import {
  isTold,
  limitsOf,
  USUAL_VOICE,
  type VoiceChoice,
} from "../../../src/speech/offline/suit.ts";
import { judge } from "../../../src/speech/offline/trial.ts";
import type { RecogniserEars } from "../../../src/speech/recogniser.ts";
import { DRILL_PHRASES } from "../../../src/words/drill.ts";
import { earsPack } from "../../tools/build/ears-pack.ts";
import { createNodeDecoders, createNodeEar, type NodeEar } from "../../tools/node-ear.ts";
import { readWav } from "../../tools/wav.ts";
import { FakeClock } from "../fake-clock.ts";

/**
 * A very deep voice: `rms` of Debian's `flite` 2.2, lowered by `sox … pitch -350` (hundredths of a
 * semitone); each file is named by what it says. What is in `later` is not read in the drill.
 */
const FOLDER = "tests/speech/offline/deep-voice";
const SLOW_MS = 600_000;

const reader = createReader();
const pack = earsPack();
const statesOf = (text: string) => JSON.stringify(reader.read([text]).statements);
const saidIn = (file: string) => file.replace(".wav", "").replaceAll("-", " ");

/** The sounds of utterances that an ear cuts out of a recording. */
function soundsOf(ear: NodeEar, path: string): Uint8Array[] {
  const sound = readWav(path);
  ear.warm(sound);
  return ear.listen(sound).map(({ sound }) => toMuLaw(sound));
}

/** The real decoders behind a drill that is fed with recordings. */
class NodeDrillEars implements DrillEars {
  #told: RecogniserEars | undefined;

  suit(): void {}

  start(told: RecogniserEars): void {
    this.#told = told;
    told.onListening();
  }

  stop(): void {
    this.#told?.onEnd();
  }

  abort(): void {
    this.#told?.onEnd();
  }

  say(sounds: readonly Uint8Array[]): void {
    for (const sound of sounds)
      this.#told?.onUtterance({
        alternatives: [{ text: "" }],
        startedAt: 0,
        endedAt: 1,
        by: "offline",
        sound,
      });
  }

  try: DrillEars["try"] = async (sounds, manner) => {
    const decoders = await createNodeDecoders({}, pack, manner);
    return sounds.map((sound) => judge(decoders, fromMuLaw(sound)));
  };
}

async function drilled(ear: NodeEar): Promise<Outcome> {
  const clock = new FakeClock();
  const ears = new NodeDrillEars();
  const drill = new Drill({ ears, reader, clock, restore: () => {} });
  drill.start();
  const files = readdirSync(join(FOLDER, "read"));
  for (const phrase of DRILL_PHRASES) {
    const file = files.find((file) => saidIn(file) === phrase);
    if (file) ears.say(soundsOf(ear, join(FOLDER, "read", file)));
    drill.next();
  }
  for (let second = 0; second < QUIET_S + CHAT_S; second += 1) clock.advance(1000);
  await vi.waitFor(() => expect(drill.state.value.is).toBe("done"), { timeout: SLOW_MS });
  const state = drill.state.value;
  if (state.is !== "done") throw new Error(state.is);
  return state.outcome;
}

describe("a voice that the usual ways hear badly", () => {
  let ear: NodeEar;
  let outcome: Outcome;

  beforeAll(async () => {
    ear = await createNodeEar({}, pack);
    outcome = await drilled(ear);
  }, SLOW_MS);

  it("is taken for a deep one by the drill, and believed more", () => {
    expect(outcome.choice.warp).toBeLessThan(1);
    expect(outcome.choice.shift).toBeLessThan(0);
    expect(outcome.right.after).toBeGreaterThan(outcome.right.before + 1);
  });

  it(
    "is then heard better in phrases that were not in the drill",
    async () => {
      const files = readdirSync(join(FOLDER, "later"));
      const said = files.map((file) => ({
        wanted: statesOf(saidIn(file)),
        sounds: soundsOf(ear, join(FOLDER, "later", file)),
      }));
      const rightIn = async (choice: VoiceChoice) => {
        const decoders = await createNodeDecoders({}, pack, choice);
        return said.filter(({ wanted, sounds }) => {
          const heard = sounds.map((sound) => judge(decoders, fromMuLaw(sound)));
          const told = heard.filter(({ text, fit }) => isTold(text, fit, limitsOf(choice)));
          return statesOf(told.map(({ text }) => text).join(" ")) === wanted;
        }).length;
      };
      const [before, after] = [await rightIn(USUAL_VOICE), await rightIn(outcome.choice)];
      console.log(`a deep voice, ${files.length} phrases: right ${before} before, ${after} after`);
      expect(after).toBeGreaterThan(before + 2);
    },
    SLOW_MS,
  );
});
