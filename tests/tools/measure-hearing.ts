/**
 * Measures the ears inside the app on synthetic speech: `measure:hearing [--phrases n] [--seed n]
 * [--scenes "clean,wind 10"]`.
 * Needs Debian's `flite`. Prints, for each voice and weather, how many of the sampled phrases come
 * out with exactly their statements, and with their numbers, each with 95 % limits (Wilson 1927),
 * the processor time a second of sound takes, and what becomes of talk that is not for the log.
 */
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { heardGrammar } from "../../grammar/fsg/heard-grammar.ts";
import { sample, seededRandom } from "../../grammar/jsgf/sample.ts";
import type { Node } from "../../grammar/jsgf/syntax.ts";
import { createReader } from "../../grammar/read.ts";
import type { Statement } from "../../grammar/statement.ts";
import { judge } from "../../src/scribe/judge.ts";
import type { Heard } from "../../src/speech/offline/ear.ts";
import { confidenceOf, USUAL_LIMITS } from "../../src/speech/offline/fit.ts";
import { SOUND_RATE_HZ } from "../../src/speech/offline/suppressor.ts";
import { createNodeEar } from "./node-ear.ts";
import { speak, under, VOICES, type VoiceName, type Weather } from "./scene.ts";

const { values } = parseArgs({
  options: {
    phrases: { type: "string", default: "30" },
    seed: { type: "string", default: "7" },
    scenes: { type: "string", default: "clean,wind 20,wind 10,wind 5,wind 0,pink 10" },
  },
});
const count = Number(values.phrases);
const seed = Number(values.seed);

/** Weather and its level in decibels below the speech. */
const SCENES = values.scenes.split(",").map((scene): [Weather | undefined, number] => {
  const [weather, snrDb] = scene.split(" ");
  return weather === "wind" || weather === "pink" ? [weather, Number(snrDb)] : [undefined, 0];
});

const reader = createReader();
const ear = await createNodeEar();

const LIMITS = [-16, -14, -13, -12, -11, -10, -9, -8, -7, -6, -5];

interface Hearing {
  statements: Statement[];
  verdicts: string[];
  /** The worst fit of what made sense; undefined where nothing did. */
  fit: number | undefined;
  secondsOfSound: number;
  secondsOfWork: number;
}

function hear(
  sentence: string,
  voice: VoiceName,
  [weather, snrDb]: (typeof SCENES)[number],
): Hearing {
  const samples = under(speak(sentence, voice), weather, snrDb, seededRandom(seed));
  const before = process.cpuUsage();
  const heard = ear.listen({ samples, rateHz: SOUND_RATE_HZ });
  const { user, system } = process.cpuUsage(before);
  const taken = heard.filter(({ text, fit }) => text !== "" && fit >= USUAL_LIMITS.refuseBelow);
  const readings = taken.map(({ text }) => reader.read([text]));
  return {
    statements: readings.flatMap(({ statements }) => statements),
    verdicts: readings.map((reading, index) =>
      judge(reading, confidenceOf(taken[index]?.fit ?? 0, USUAL_LIMITS)),
    ),
    fit: worstFit(heard),
    secondsOfSound: samples.length / SOUND_RATE_HZ,
    secondsOfWork: (user + system) / 1e6,
  };
}

function worstFit(heard: readonly Heard[]): number | undefined {
  const sensible = heard.filter(({ text }) => reader.read([text]).verdict !== "ignore");
  return sensible.length === 0 ? undefined : Math.min(...sensible.map(({ fit }) => fit));
}

/** What each limit would let through, in per cent, whether heard right or wrong. */
function printTradeOff(name: string, fits: readonly (number | undefined)[]): void {
  const shares = LIMITS.map((limit) => {
    const taken = fits.filter((fit) => fit !== undefined && fit >= limit).length;
    return `${limit}: ${((100 * taken) / fits.length).toFixed(1)}`;
  });
  console.log(`${name} | taken at a limit of ${shares.join(", ")}`);
}

/** Sentences that mean something, drawn from what can be heard. */
function drawSentences(): string[] {
  const grammar = heardGrammar();
  const root = grammar.rules.get(grammar.publicRule) as Node;
  const random = seededRandom(seed);
  const drawn: string[] = [];
  while (drawn.length < count) {
    const sentence = sample(root, grammar, random) as string;
    if (reader.read([sentence]).verdict !== "ignore") drawn.push(sentence);
  }
  return drawn;
}

const numbersOf = (statements: readonly Statement[]): string =>
  (JSON.stringify(statements).match(/-?\d+(\.\d+)?/g) ?? []).join(" ");

/** A share in per cent with its 95 % limits. */
function share(hits: number, of: number): string {
  const z = 1.96;
  const p = hits / of;
  const middle = (p + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const reach = (z / (1 + z ** 2 / of)) * Math.sqrt((p * (1 - p)) / of + z ** 2 / (4 * of ** 2));
  const percent = (x: number) => (100 * x).toFixed(1);
  return `${percent(p)} (${percent(middle - reach)} to ${percent(middle + reach)})`;
}

function measurePhrases(): void {
  const sentences = drawSentences();
  for (const scene of SCENES) {
    const name = scene[0] ? `${scene[0]} ${scene[1]} dB` : "clean";
    const fits: (number | undefined)[] = [];
    for (const voice of VOICES) {
      let [exact, numbers, withNumbers, sound, work] = [0, 0, 0, 0, 0];
      for (const sentence of sentences) {
        const wanted = reader.read([sentence]).statements;
        const got = hear(sentence, voice, scene);
        if (JSON.stringify(got.statements) === JSON.stringify(wanted)) exact += 1;
        if (numbersOf(wanted) !== "") {
          withNumbers += 1;
          if (numbersOf(got.statements) === numbersOf(wanted)) numbers += 1;
        }
        fits.push(got.fit);
        sound += got.secondsOfSound;
        work += got.secondsOfWork;
      }
      console.log(
        `${name} | ${voice} | exact ${share(exact, count)} | numbers ${share(numbers, withNumbers)} | real-time factor ${(work / sound).toFixed(3)}`,
      );
    }
    printTradeOff(name, fits);
  }
}

function measureTalk(): void {
  const path = new URL("../grammar/tables/chatter.txt", import.meta.url);
  const lines = readFileSync(path, "utf8")
    .split("\n")
    .filter((line) => line && !line.startsWith("#"));
  const random = seededRandom(seed);
  const said = Array.from(
    { length: count },
    () => lines[Math.floor(random() * lines.length)] ?? "",
  );
  const fits: (number | undefined)[] = [];
  for (const voice of VOICES) {
    const heard = said.map((line) => hear(line, voice, [undefined, 0]));
    const verdicts = heard.map((one) => one.verdicts);
    fits.push(...heard.map(({ fit }) => fit));
    const logged = verdicts.filter((of) => of.includes("log")).length;
    const checked = verdicts.filter((of) => !of.includes("log") && of.includes("check")).length;
    console.log(`talk | ${voice} | log ${share(logged, count)} | check ${share(checked, count)}`);
  }
  printTradeOff("talk", fits);
}

measurePhrases();
measureTalk();
console.log(
  `memory | ${Math.round(process.memoryUsage().rss / 2 ** 20)} MiB resident, Node and all`,
);
