/**
 * Strangers' input: links, logs, tables and vocabularies, whole and damaged in all ways, are taken in
 * or refused with a sentence, and what was taken in can be looked at and passed on.
 */
import fc from "fast-check";
import { randomNumbers } from "../../analysis/fixtures/session.ts";
import { day } from "../../share/days.ts";
import { type Damage, FILES_AND_LINKS } from "./inputs.ts";
import { mutate } from "./mutate.ts";
import { tryWords } from "./words.ts";

export interface FuzzReport {
  inputs: number;
  taken: number;
  refused: number;
  /** What went wrong, with the input that did it; there should be none. */
  faults: string[];
  /** The dearest input, by what the whole process worked for it; milliseconds. */
  slowest: { input: number; cpuMs: number; wallMs: number };
  /** How much larger the process was than after the first tenth, at most; bytes. */
  grownBytes: number;
}

/** How many made-up days the inputs are damaged from. */
const DAYS = 400;
/** Of so many inputs one is left whole, and one is a vocabulary, which takes longest. */
const WHOLE = 20;
const VOCABULARY = 200;
/** A page that works for longer is taken for dead. */
const HANG_MS = 1000;
const MS_PER_US = 1 / 1000;

/** @param seed gives the same inputs again */
export async function fuzzStrangersInput(inputs: number, seed: number): Promise<FuzzReport> {
  const days = fc.sample(day, { numRuns: DAYS, seed });
  const random = randomNumbers(seed);
  const faults: string[] = [];
  const slowest = { input: 0, cpuMs: 0, wallMs: 0 };
  const report: FuzzReport = { inputs, taken: 0, refused: 0, faults, slowest, grownBytes: 0 };
  let settled = Number.POSITIVE_INFINITY;
  for (let n = 0; n < inputs; n += 1) {
    const events = days[Math.floor(random() * days.length)] ?? [];
    const ofFiles = FILES_AND_LINKS[n % FILES_AND_LINKS.length] ?? tryWords;
    const trial = n % VOCABULARY === 0 ? tryWords : ofFiles;
    const damage: Damage = random() < 1 / WHOLE ? (text) => text : (text) => mutate(text, random);
    const [before, started] = [process.cpuUsage(), performance.now()];
    const fault = await trial(events, damage, random).then(
      (isTaken) => {
        report[isTaken ? "taken" : "refused"] += 1;
        return pollution();
      },
      (cause) => `input ${n}: ${cause?.stack ?? cause}`,
    );
    if (fault) faults.push(fault);
    const { user, system } = process.cpuUsage(before);
    const cpuMs = (user + system) * MS_PER_US;
    if (cpuMs > slowest.cpuMs) {
      Object.assign(slowest, { input: n, cpuMs, wallMs: performance.now() - started });
    }
    if (n === Math.floor(inputs / 10)) settled = process.memoryUsage().rss;
    if (n % 1000 === 0) {
      report.grownBytes = Math.max(report.grownBytes, process.memoryUsage().rss - settled);
    }
  }
  if (slowest.cpuMs > HANG_MS) faults.push(`input ${slowest.input} took ${slowest.cpuMs} ms`);
  return report;
}

const pollution = (): string | undefined =>
  "polluted" in {} ? "Every object got a new field." : undefined;
