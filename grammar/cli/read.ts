/**
 * Reads utterances from standard input, one a line (alternatives separated by tabs), and prints a
 * line of JSON for each: heard, verdict, statements, said, leftover.
 */
import { createInterface } from "node:readline";
import { createReader } from "../read.ts";
import { say } from "../say.ts";

const reader = createReader();

for await (const line of createInterface({ input: process.stdin })) {
  const { heard, verdict, statements, leftover } = reader.read(line.split("\t"));
  const said = statements.map(say).join(", ");
  process.stdout.write(`${JSON.stringify({ heard, verdict, statements, said, leftover })}\n`);
}
