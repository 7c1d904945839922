/**
 * Hears WAV files as the app hears without a signal, and prints a line of JSON for each utterance:
 * file, from and to (seconds), text, verdict, statements. Talk that fits no phrase has no text.
 */

import { createReader } from "../../grammar/read.ts";
import { hasGarbage } from "../../src/speech/offline/garbage.ts";
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
  for (const { from, to, text: heard } of ear.listen(readWav(file))) {
    const text = hasGarbage(heard) ? "" : heard;
    const { verdict, statements } = reader.read([text]);
    process.stdout.write(`${JSON.stringify({ file, from, to, text, verdict, statements })}\n`);
  }
}
