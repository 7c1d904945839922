/** The ears inside the app: heard right, how late, and what they cost while nothing is said. */
import { spawnSync } from "node:child_process";
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { createReader } from "../../../grammar/read.ts";
import { USUAL_LIMITS } from "../../../src/speech/offline/fit.ts";
import { isTold } from "../../../src/speech/offline/suit.ts";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import { share } from "../../tools/hearing/score.ts";
import { sampled, talk } from "../../tools/hearing/sets.ts";
import { createNodeEar, type NodeEar } from "../../tools/node-ear.ts";
import { speak, under, VOICES, type Weather } from "../../tools/scene.ts";
import { type Measured, type Options, rounded, type Table } from "../part.ts";
import { spread, workOf } from "../times.ts";
import { hourOf } from "./hour.ts";
import { gusts, hiss, nothing } from "./long-sounds.ts";

export const title = "Hearing inside the app";

const PHRASES = 40;
const WEATHERS: readonly { name: string; weather?: Weather; snrDb?: number }[] = [
  { name: "still" },
  { name: "wind, 10 dB", weather: "wind", snrDb: 10 },
  { name: "wind, 0 dB", weather: "wind", snrDb: 0 },
];
/** A microphone's own noise, and a wind as loud as speech: root mean square, full scale 1. */
const HISS_LEVEL = 1e-3;
const WIND_LEVEL = 0.05;

interface Said {
  phrase: string;
  speech: Float32Array;
}

async function heardIn(ear: NodeEar, all: readonly Said[], place: number, seed: number) {
  const { weather, snrDb = 0 } = WEATHERS[place] ?? {};
  const reader = createReader();
  const states = (lines: readonly string[]) =>
    JSON.stringify(lines.flatMap((line) => reader.read([line]).statements));
  let [right, work, seconds] = [0, 0, 0];
  const lateMs: number[] = [];
  for (const [n, { phrase, speech }] of all.entries()) {
    const sound = {
      samples: under(speech, weather, snrDb, seededRandom(seed + n)),
      rateHz: SOUND_RATE_HZ,
    };
    ear.warm(sound);
    let heard: ReturnType<NodeEar["listen"]> = [];
    work += await workOf(() => {
      heard = ear.listen(sound);
    });
    seconds += sound.samples.length / SOUND_RATE_HZ;
    const told = heard.filter(({ text, fit }) => isTold(text, fit, USUAL_LIMITS));
    if (states(told.map(({ text }) => text)) === states([phrase])) right += 1;
    lateMs.push(...heard.slice(-1).map((one) => one.lateMs));
  }
  return { right, factor: work / 1000 / seconds, late: spread(lateMs) };
}

async function idle(ear: NodeEar, seed: number): Promise<Table> {
  const random = seededRandom(seed);
  const sounds = {
    "silence, nothing at all": nothing(),
    "silence, a microphone's hiss": hiss(HISS_LEVEL, random),
    wind: gusts(WIND_LEVEL, random),
  };
  const mebibytes = (bytes: number) => rounded(bytes / 2 ** 20, 0);
  const rows: (string | number)[][] = [];
  for (const [name, source] of Object.entries(sounds)) {
    const hour = await hourOf(ear, source);
    const work = [rounded(hour.workSeconds / 36, 1), rounded(hour.workSeconds, 0)];
    const awake = [hour.utterances, rounded(hour.awakeSeconds, 0), hour.told, hour.taken];
    rows.push([name, ...work, ...awake, mebibytes(hour.bytesBefore), mebibytes(hour.bytesAfter)]);
  }
  return {
    caption:
      "An hour of each in which nobody speaks, fed faster than it lasts. Memory is all of Node's and the bench's, resident, after clearing up:",
    head: [
      "sound",
      "processor, of 100",
      "seconds of processor",
      "taken for speech, times",
      "decoder awake, s",
      "told",
      "logged or for a look",
      "MiB before",
      "MiB after",
    ],
    rows,
  };
}

/** Of talk that is none of the log's, how much is taken. */
async function ofTalk(ear: NodeEar, seed: number): Promise<string> {
  const reader = createReader();
  const lines = talk(PHRASES, seed);
  const taken = lines.filter((line, n) => {
    const speech = speak(line, VOICES[n % VOICES.length] as (typeof VOICES)[number]);
    const sound = {
      samples: under(speech, undefined, 0, seededRandom(seed)),
      rateHz: SOUND_RATE_HZ,
    };
    ear.warm(sound);
    return ear
      .listen(sound)
      .filter(({ text, fit }) => isTold(text, fit, USUAL_LIMITS))
      .some(({ text }) => reader.read([text]).verdict !== "ignore");
  });
  return `${taken.length}`;
}

export async function measure({ seed }: Options): Promise<Measured> {
  if (spawnSync("flite", ["-lv"], { stdio: "ignore" }).error)
    throw new Error("Install Debian's package flite, whose voices are heard.");
  const ear = await createNodeEar();
  const all = sampled(PHRASES, seed).map((phrase, n) => ({
    phrase,
    speech: speak(phrase, VOICES[n % VOICES.length] as (typeof VOICES)[number]),
  }));
  const rows: (string | number)[][] = [];
  for (const [place, { name }] of WEATHERS.entries()) {
    const { right, factor, late } = await heardIn(ear, all, place, seed);
    const shares = [share(right, PHRASES), rounded(factor, 3)];
    rows.push([name, ...shares, rounded(late.median, 0), rounded(late.p95, 0)]);
  }
  const phrases: Table = {
    caption: `${PHRASES} phrases by ${VOICES.length} synthetic voices (flite), with 95 % limits; the last piece of sound is what text is later than the detector's end of speech. Of ${PHRASES} lines of talk ${await ofTalk(ear, seed)} are taken for the log or a look.`,
    head: ["", "right, of 100", "real-time factor", "last piece, ms", "p95, ms"],
    rows,
  };
  return { tables: [phrases, await idle(ear, seed)], figures: {} };
}
