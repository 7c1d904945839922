/**
 * Measures the ears inside the app on synthetic speech: `measure:hearing [--phrases n] [--talk n]
 * [--seed n] [--parts "clean,wind 10,told,talk"] [--voices "rms,slt"]`. Needs Debian's `flite`, or
 * `libttspico-utils` (not free) for the voices "en-GB" and "en-US"; uses `pocketsphinx` for the
 * baseline and `pocketsphinx-testdata` for people's recordings, and says where one is missing. Each
 * phrase is spoken by one voice, in turn. Shares come with 95 % limits (Wilson 1927); times are the
 * processor's.
 */
import { parseArgs } from "node:util";
import { seededRandom } from "../../grammar/jsgf/sample.ts";
import { createReader } from "../../grammar/read.ts";
import type { Statement } from "../../grammar/statement.ts";
import { judge } from "../../src/scribe/judge.ts";
import { confidenceOf, USUAL_LIMITS } from "../../src/speech/offline/fit.ts";
import { isTold } from "../../src/speech/offline/suit.ts";
import { SOUND_RATE_HZ } from "../../src/speech/offline/suppressor.ts";
import { dictate, isInstalled } from "./hearing/dictation.ts";
import { recordings } from "./hearing/people.ts";
import { quantile, Score, share } from "./hearing/score.ts";
import { examples, inOneBreath, plain, sampled, talk, told } from "./hearing/sets.ts";
import { createNodeEar, type NodeHeard } from "./node-ear.ts";
import { OTHER_VOICES, speak, under, VOICES, type Weather } from "./scene.ts";
import type { Sound } from "./wav.ts";

const { values } = parseArgs({
  options: {
    phrases: { type: "string", default: "100" },
    talk: { type: "string", default: "100" },
    seed: { type: "string", default: "7" },
    parts: {
      type: "string",
      default:
        "clean,plain,told,examples,breath,wind 20,wind 15,wind 10,wind 5,wind 0,pink 10,slow,quick,talk,people,idle,dictation",
    },
    voices: { type: "string", default: VOICES.join(",") },
  },
});
const [count, talkCount, seed] = [values.phrases, values.talk, values.seed].map(Number) as [
  number,
  number,
  number,
];

const voices = values.voices.split(",").map((name) => {
  const voice = [...VOICES, ...OTHER_VOICES].find((one) => one === name);
  if (!voice) throw new Error(`There is no voice "${name}".`);
  return voice;
});
type Voice = (typeof voices)[number];
/** In turn. */
const voiceOf = (index: number) => voices[index % voices.length] as Voice;

const reader = createReader();
const ear = await createNodeEar();

interface Hearing {
  statements: Statement[];
  verdicts: string[];
  /** Best and worst fit of what makes sense; none where nothing does. */
  fits: number[];
  heard: NodeHeard[];
  workSeconds: number;
  refused: boolean;
}

function hear(sound: Sound): Hearing {
  ear.warm(sound);
  const before = process.cpuUsage();
  const heard = ear.listen(sound);
  const { user, system } = process.cpuUsage(before);
  const told = heard.filter(({ text, fit }) => isTold(text, fit, USUAL_LIMITS));
  const readings = told.map(({ text }) => reader.read([text]));
  const sensible = heard.filter(({ text }) => reader.read([text]).verdict !== "ignore");
  return {
    statements: readings.flatMap(({ statements }) => statements),
    verdicts: readings.map((reading, index) =>
      judge(reading, confidenceOf(told[index]?.fit ?? 0, USUAL_LIMITS), "offline"),
    ),
    fits: sensible.map(({ fit }) => fit),
    heard,
    workSeconds: (user + system) / 1e6,
    refused: told.length < heard.length || heard.length === 0,
  };
}

interface Scene {
  weather?: Weather;
  snrDb?: number;
  stretch?: number;
}

/** Where the last sound of a word ends, in milliseconds; synthetic voices go on with silence. */
function endMs(sound: Float32Array): number {
  const loudest = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const last = sound.findLastIndex((sample) => Math.abs(sample) > loudest / 50);
  return (1000 * last) / SOUND_RATE_HZ;
}

/** Of a limit of fit: the share of phrases it takes. For the trade-off against talk. */
const fitsOfPhrases: number[] = [];

function measurePhrases(name: string, phrases: readonly string[], scene: Scene = {}): void {
  const scores = new Map<Voice, Score>(voices.map((voice) => [voice, new Score()]));
  const whole = new Score();
  const lateMs: number[] = [];
  for (const [index, phrase] of phrases.entries()) {
    const voice = voiceOf(index);
    const speech = speak(phrase, voice, scene.stretch);
    const samples = under(speech, scene.weather, scene.snrDb ?? 0, seededRandom(seed + index));
    const got = hear({ samples, rateHz: SOUND_RATE_HZ });
    const wanted = reader.read([phrase]).statements;
    for (const score of [whole, scores.get(voice) as Score])
      score.add(wanted, got, samples.length / SOUND_RATE_HZ);
    const last = got.heard.at(-1);
    const margin = (1000 * (samples.length - speech.length)) / 2 / SOUND_RATE_HZ;
    if (last) lateMs.push(last.toMs - margin - endMs(speech) + last.lateMs);
    if (name === "clean")
      fitsOfPhrases.push(Math.min(...got.fits, ...(got.fits.length ? [] : [-99])));
  }
  for (const [voice, score] of scores) console.log(`${name} | ${voice} | ${score.print()}`);
  console.log(
    `${name} | all | ${whole.print()} | speech's end to text p95 ${quantile(lateMs, 0.95).toFixed(0)} ms`,
  );
}

const LIMITS = [-14, -13, -12, -11, -10, -9, -8, -7, -6, -5];
/** Somebody beside the log says a sentence every quarter of a minute: a choice of our own. */
const SENTENCES_AN_HOUR = 240;

function measureTalk(): void {
  const lines = talk(talkCount, seed);
  const all = lines.map((line, index) => {
    const samples = under(speak(line, voiceOf(index)), undefined, 0, seededRandom(seed));
    return hear({ samples, rateHz: SOUND_RATE_HZ });
  });
  const logged = all.filter(({ verdicts }) => verdicts.includes("log")).length;
  const checked = all.filter(
    ({ verdicts }) => !verdicts.includes("log") && verdicts.includes("check"),
  ).length;
  console.log(`talk | log ${share(logged, all.length)} | check ${share(checked, all.length)}`);
  for (const limit of LIMITS) {
    const taken = all.filter(({ fits }) => fits.some((fit) => fit >= limit)).length / all.length;
    const missed = fitsOfPhrases.filter((fit) => fit < limit).length / fitsOfPhrases.length;
    console.log(
      `limit ${limit} | false entries an hour ${(taken * SENTENCES_AN_HOUR).toFixed(1)} | entries missed ${(100 * missed).toFixed(1)} %`,
    );
  }
}

function measurePeople(): void {
  const all = recordings();
  if (all.length === 0) console.log("people | pocketsphinx-testdata is not installed");
  for (const { file, sound } of all) {
    const { verdicts, heard } = hear(sound);
    const told = heard.filter(({ text, fit }) => isTold(text, fit, USUAL_LIMITS));
    console.log(
      `people | ${file} | ${verdicts.join(" ") || "nothing told"} | ${told.map(({ text }) => text).join(" / ")}`,
    );
  }
}

/** A hiss far below speech: the detector is awake, the decoders sleep. */
function measureIdle(): void {
  const random = seededRandom(seed);
  const seconds = 60;
  for (const level of [0, 0.0003, 0.001]) {
    const samples = Float32Array.from(
      { length: seconds * SOUND_RATE_HZ },
      () => (random() * 2 - 1) * level,
    );
    const { workSeconds } = hear({ samples, rateHz: SOUND_RATE_HZ });
    console.log(
      `idle | hiss of ${level} | ${((100 * workSeconds) / seconds).toFixed(1)} % of a core`,
    );
  }
}

function measureDictation(phrases: readonly string[]): void {
  if (!isInstalled()) {
    console.log("dictation | pocketsphinx is not installed");
    return;
  }
  const score = new Score();
  const sounds = phrases.map((phrase, index) =>
    under(speak(phrase, voiceOf(index)), undefined, 0, seededRandom(seed)),
  );
  for (const [index, text] of dictate(sounds).entries()) {
    const wanted = reader.read([phrases[index] as string]).statements;
    score.add(
      wanted,
      { statements: reader.read([text]).statements, workSeconds: 0, refused: text === "" },
      1,
    );
  }
  console.log(`dictation and our reader | all | ${score.print()}`);
}

function measurePart(part: string): void {
  const phrases = () => sampled(count, seed);
  const [weather, snrDb] = part.split(" ");
  if (weather === "wind" || weather === "pink") {
    measurePhrases(`${part} dB`, phrases(), { weather, snrDb: Number(snrDb) });
    return;
  }
  const parts: Readonly<Record<string, () => void>> = {
    clean: () => measurePhrases("clean", phrases()),
    plain: () => measurePhrases("plain", plain(count, seed)),
    told: () => measurePhrases("told", told(count, seed)),
    examples: () => measurePhrases("examples", examples(count, seed)),
    breath: () => measurePhrases("in one breath", inOneBreath(count, seed)),
    slow: () => measurePhrases("slow", phrases(), { stretch: 1.25 }),
    quick: () => measurePhrases("quick", phrases(), { stretch: 0.85 }),
    talk: measureTalk,
    people: measurePeople,
    idle: measureIdle,
    dictation: () => measureDictation(phrases()),
  };
  const measure = parts[part];
  if (!measure) throw new Error(`There is no part "${part}".`);
  measure();
}

for (const part of values.parts.split(",")) measurePart(part);
console.log(
  `memory | ${Math.round(process.memoryUsage().rss / 2 ** 20)} MiB resident, Node and all`,
);
