/**
 * Hears WAV files as the app hears without a signal, and prints a line of JSON for each utterance:
 * file, from and to (seconds), text, confidence, verdict, statements. Talk that fits no phrase has
 * no text. A file that can't be read is named on standard error, and the others are heard.
 */
import { createReader } from "../../grammar/read.ts";
import { judge } from "../../src/scribe/judge.ts";
import { confidenceOf, USUAL_LIMITS } from "../../src/speech/offline/fit.ts";
import { isTold } from "../../src/speech/offline/suit.ts";
import { createNodeEar, type NodeEar } from "./node-ear.ts";
import { readWav } from "./wav.ts";

const reader = createReader();

function linesOf(ear: NodeEar, file: string): string[] {
  const sound = readWav(file);
  ear.warm(sound);
  return ear.listen(sound).map(({ fit, fromMs, toMs, ...heard }) => {
    const text = isTold(heard.text, fit, USUAL_LIMITS) ? heard.text : "";
    const confidence = Number(confidenceOf(fit, USUAL_LIMITS).toFixed(3));
    const reading = reader.read([text]);
    const verdict = judge(reading, confidence, "offline");
    const [from, to] = [fromMs / 1000, toMs / 1000];
    return JSON.stringify({
      file,
      from,
      to,
      text,
      confidence,
      verdict,
      statements: reading.statements,
    });
  });
}

async function main(files: readonly string[]): Promise<void> {
  if (files.length === 0) {
    process.stderr.write("Name one WAV file or more: hear FILE.wav\n");
    process.exitCode = 1;
    return;
  }
  const ear = await createNodeEar();
  for (const file of files) {
    try {
      for (const line of linesOf(ear, file)) process.stdout.write(`${line}\n`);
    } catch (problem) {
      process.stderr.write(`${problem instanceof Error ? problem.message : String(problem)}\n`);
      process.exitCode = 1;
    }
  }
}

await main(process.argv.slice(2));
