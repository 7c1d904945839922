import { readdirSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { createReader } from "../../../grammar/read.ts";
import type { Heard } from "../../../src/speech/offline/ear.ts";
import { USUAL_LIMITS } from "../../../src/speech/offline/fit.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import { hiss } from "../../bench/hearing/long-sounds.ts";
import { createNodeEar, type NodeEar } from "../../tools/node-ear.ts";
import { resample } from "../../tools/resample.ts";
import { readWav } from "../../tools/wav.ts";

/** Speech by the voice `slt` of Debian's `flite` 2.2; each file is named by what it says. */
const FOLDER = "tests/browser/said";
const FILES = readdirSync(FOLDER);

const states = (text: string) => createReader().read([text]).statements;
const isTaken = ({ text, fit }: Heard) => text !== "" && fit >= USUAL_LIMITS.refuseBelow;
const soundOf = (file: string) => readWav(join(FOLDER, file));

describe("the ears inside the app", () => {
  let ear: NodeEar;

  beforeAll(async () => {
    ear = await createNodeEar();
  }, 60_000);

  it.each(FILES)("hear %s", (file) => {
    const heard = ear.listen(soundOf(file));
    const said = file.replace(".wav", "").replaceAll("-", " ");
    expect(heard.flatMap(({ text }) => states(text))).toEqual(states(said));
    for (const { fit } of heard) expect(fit).toBeGreaterThan(USUAL_LIMITS.sureFrom);
  });

  it("tell two phrases apart, and when each was said", () => {
    const [first, second] = [soundOf("new-net.wav"), soundOf("lost-one-at-the-net.wav")];
    const pause = new Float32Array(first.rateHz);
    const samples = Float32Array.from([...first.samples, ...pause, ...second.samples]);
    const heard = ear.listen({ samples, rateHz: first.rateHz });
    expect(heard).toHaveLength(2);
    const pauseAtMs = (1000 * first.samples.length) / first.rateHz;
    expect(heard[1]?.fromMs).toBeGreaterThan(pauseAtMs);
    expect(heard[1]?.fromMs).toBeLessThan(pauseAtMs + 1200);
  });

  it("hear nothing in silence", () => {
    expect(ear.listen({ samples: new Float32Array(48_000), rateHz: 16_000 })).toEqual([]);
  });

  it("sleep through a microphone's hiss", () => {
    const heard: Heard[] = [];
    const open = ear.open((utterance) => heard.push(utterance));
    const [source, second] = [hiss(1e-3, seededRandom(1)), new Float32Array(SOUND_RATE_HZ)];
    for (let n = 0; n < 120; n += 1) {
      source(second);
      open.hear(second);
    }
    open.end();
    expect(heard).toEqual([]);
  });

  it("take speech that runs backwards for talk", () => {
    for (const file of FILES) {
      const { samples, rateHz } = soundOf(file);
      const heard = ear.listen({ samples: samples.slice().reverse(), rateHz });
      expect(heard.filter(isTaken), file).toEqual([]);
    }
  });

  it("hear no words in a whistle", () => {
    for (let step = 2; step < 6; step += 0.5) {
      const samples = Float32Array.from({ length: 48_000 }, (_, i) => Math.sin(i / step) / 4);
      const heard = ear.listen({ samples, rateHz: 16_000 });
      expect(heard.length, "the ear was awake").toBeGreaterThan(0);
      expect(heard.filter(isTaken).map(({ text }) => text)).toEqual([]);
      for (const { fromMs } of heard) expect(fromMs).toBeGreaterThanOrEqual(0);
    }
  });
});

describe("bringing a sound to another rate", () => {
  it("keeps a tone's height and strength", () => {
    const tone = (rateHz: number) =>
      Float32Array.from({ length: rateHz / 4 }, (_, i) =>
        Math.sin((2 * Math.PI * 500 * i) / rateHz),
      );
    for (const from of [8_000, 16_000, 22_050, 44_100]) {
      const brought = resample(tone(from), from, 48_000).subarray(2_000, 9_000);
      const wanted = tone(48_000).subarray(2_000, 9_000);
      const worst = Math.max(
        ...brought.map((sample, i) => Math.abs(sample - (wanted[i] as number))),
      );
      expect(worst, String(from)).toBeLessThan(0.02);
    }
  });
});
