/** An hour in which nobody speaks, heard faster than it lasts: what it costs, and what wakes the decoders. */
import { createReader } from "../../../grammar/read.ts";
import { judge } from "../../../src/scribe/judge.ts";
import { confidenceOf, USUAL_LIMITS } from "../../../src/speech/offline/fit.ts";
import { isTold } from "../../../src/speech/offline/suit.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import { type NodeEar, PIECE_SAMPLES } from "../../tools/node-ear.ts";
import { residentBytes } from "../../trials/held-bytes.ts";
import { workOf } from "../times.ts";
import type { Source } from "./long-sounds.ts";

const HOUR_SAMPLES = 3600 * SOUND_RATE_HZ;
/** Three seconds, made before they are heard and timed. */
const MADE_SAMPLES = 100 * PIECE_SAMPLES;

export interface Hour {
  /** Of processor. */
  workSeconds: number;
  /** How often the detector took the sound for speech, and how long the decoders were awake in all. */
  utterances: number;
  awakeSeconds: number;
  /** How many of them were told, and how many would have been logged or put up for a look. */
  told: number;
  taken: number;
  /** Of the process, after clearing up. */
  bytesBefore: number;
  bytesAfter: number;
}

export async function hourOf(ear: NodeEar, source: Source): Promise<Hour> {
  const reader = createReader();
  const bytesBefore = residentBytes();
  let [utterances, awakeSeconds, told, taken] = [0, 0, 0, 0];
  const open = ear.open(({ text, fit, fromMs, toMs }) => {
    utterances += 1;
    awakeSeconds += (toMs - fromMs) / 1000;
    if (!isTold(text, fit, USUAL_LIMITS)) return;
    told += 1;
    const verdict = judge(reader.read([text]), confidenceOf(fit, USUAL_LIMITS), "offline");
    if (verdict !== "ignore") taken += 1;
  });
  const made = new Float32Array(MADE_SAMPLES);
  let workMs = 0;
  for (let at = 0; at < HOUR_SAMPLES; at += MADE_SAMPLES) {
    source(made);
    workMs += await workOf(() => {
      for (let from = 0; from < MADE_SAMPLES; from += PIECE_SAMPLES)
        open.hear(made.subarray(from, from + PIECE_SAMPLES));
    });
  }
  open.end();
  const workSeconds = workMs / 1000;
  const bytesAfter = residentBytes();
  return { workSeconds, utterances, awakeSeconds, told, taken, bytesBefore, bytesAfter };
}
