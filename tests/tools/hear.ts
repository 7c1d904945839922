/**
 * Hears WAV files as the app hears without a signal, and prints a line of JSON for each utterance:
 * file, from and to (seconds), text, confidence, verdict, statements. Talk that fits no phrase has
 * no text.
 */
import { createReader } from "../../grammar/read.ts";
import { judge } from "../../src/scribe/judge.ts";
import { confidenceOf, USUAL_LIMITS } from "../../src/speech/offline/fit.ts";
import { createNodeEar } from "./node-ear.ts";
import { readWav } from "./wav.ts";

const files = process.argv.slice(2);
if (files.length === 0) {
  process.stderr.write("Name one WAV file or more: hear FILE.wav\n");
  process.exit(1);
}

const ear = await createNodeEar();
const reader = createReader();
for (const file of files) {
  for (const { fit, fromMs, toMs, ...heard } of ear.listen(readWav(file))) {
    const text = fit < USUAL_LIMITS.refuseBelow ? "" : heard.text;
    const confidence = Number(confidenceOf(fit, USUAL_LIMITS).toFixed(3));
    const reading = reader.read([text]);
    const verdict = judge(reading, confidence);
    const [from, to] = [fromMs / 1000, toMs / 1000];
    const { statements } = reading;
    const line = { file, from, to, text, confidence, verdict, statements };
    process.stdout.write(`${JSON.stringify(line)}
`);
  }
}
