import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { DECODER_RATE_HZ } from "../../../src/speech/offline/decoder.ts";
import { toMuLaw } from "../../../src/speech/offline/mu-law.ts";
import { USUAL_VOICE } from "../../../src/speech/offline/suit.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import type { FromWorker } from "../../../src/speech/offline/worker-messages.ts";
import { resample } from "../../tools/resample.ts";
import { FilePort, RealWorker, SUIT, said, silence } from "./real-worker.ts";

const NEW_NET = said("tests/browser/said/new-net.wav");
const LOST_ONE = said("tests/browser/said/lost-one-at-the-net.wav");
const SPONDLE = said("tests/speech/offline/own-words/spondle-two-pounds.wav");
const NINE = Date.UTC(2026, 5, 6, 9);

const worker = new RealWorker();
let microphone: FilePort;

beforeAll(() => worker.begin(), 60_000);

beforeEach(() => {
  worker.told.length = 0;
  microphone = new FilePort(NINE);
});

afterEach(() => {
  worker.tell({ is: "finish" });
  microphone.close();
});

afterAll(() => vi.unstubAllGlobals());

/** Interim words and signs of life left out. */
const told = () => worker.words.filter((one) => one !== "interim" && one !== "alive");

async function listen(): Promise<void> {
  microphone.listen(worker);
  await worker.until("ready");
}

test("an utterance is told with its time once it is over, and that sound arrives", async () => {
  await listen();
  await microphone.give(silence(2));
  await microphone.give(NEW_NET);
  await microphone.give(silence(1));
  expect(told()).toEqual(["ready", "heard: new net"]);
  const { startedAt, endedAt } = worker.heard;
  expect(startedAt - NINE).toBeGreaterThan(1500);
  expect(startedAt - NINE).toBeLessThan(2200);
  expect(endedAt - startedAt).toBeGreaterThan(800);
  expect(endedAt - startedAt).toBeLessThan(1800);
  expect(worker.words.filter((one) => one === "alive")).toHaveLength(3);
});

test("told to finish in the middle of an utterance, it tells what was said, and hears nothing after", async () => {
  await listen();
  await microphone.give(NEW_NET);
  worker.tell({ is: "finish" });
  expect(told()).toEqual(["ready", "heard: new net", "finished"]);
  await microphone.give(LOST_ONE);
  await microphone.give(silence(1));
  expect(told()).toHaveLength(3);
});

test("a microphone that stays open does not speak into the next one's hearing", async () => {
  await listen();
  worker.tell({ is: "finish" });
  const left = microphone;
  microphone = new FilePort(NINE);
  worker.told.length = 0;
  await listen();
  await left.give(LOST_ONE);
  left.close();
  await microphone.give(NEW_NET);
  worker.tell({ is: "finish" });
  expect(told()).toEqual(["ready", "heard: new net", "finished"]);
});

test("told to finish before it is ready, it does not begin", async () => {
  worker.tell({ is: "learn", suit: { ...SUIT, withSound: true } });
  microphone.listen(worker);
  worker.tell({ is: "finish" });
  worker.tell({ is: "try", sounds: [], manner: USUAL_VOICE });
  await worker.until("tried");
  expect(told()).toEqual(["finished", "tried"]);
});

test("while kept utterances are tried in another manner, what is said is heard", async () => {
  await listen();
  const kept = toMuLaw(resample(NEW_NET, SOUND_RATE_HZ, DECODER_RATE_HZ));
  worker.tell({ is: "try", sounds: Array(8).fill(kept), manner: USUAL_VOICE });
  await microphone.give(LOST_ONE);
  await microphone.give(silence(1));
  await worker.until("tried");
  expect(told()).toEqual(["ready", "heard: lost one at the net", "tried"]);
  const { tried } = worker.told.at(-1) as Extract<FromWorker, { is: "tried" }>;
  expect(tried.map(({ text }) => text)).toEqual(Array(8).fill("new net"));
});

test("words learnt in the middle of an utterance are known from the next on", async () => {
  await listen();
  await microphone.give(NEW_NET);
  worker.tell({ is: "learn", suit: { ...SUIT, own: { own_species: [{ spoken: "spondle" }] } } });
  await worker.until("heard");
  await microphone.give(silence(1));
  await microphone.give(SPONDLE);
  await microphone.give(silence(1));
  const spondle = expect.stringMatching("spondle two pounds");
  expect(told()).toEqual(["ready", "heard: new net", spondle]);
});

test("sound comes with what is heard only where it is asked for", async () => {
  await listen();
  await microphone.give(NEW_NET);
  worker.tell({ is: "finish" });
  expect(worker.heard.sound).toBeUndefined();
  worker.tell({ is: "learn", suit: { ...SUIT, withSound: true } });
  microphone.close();
  microphone = new FilePort(NINE);
  worker.told.length = 0;
  await listen();
  await microphone.give(NEW_NET);
  worker.tell({ is: "finish" });
  expect(worker.heard.sound?.length).toBeGreaterThan(0.8 * DECODER_RATE_HZ);
});
