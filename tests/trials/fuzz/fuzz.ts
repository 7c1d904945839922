/**
 * Strangers' input: links, logs, tables, vocabularies, invitations and a board's messages, whole and
 * damaged in all ways, are taken in or refused, and what was taken in can be looked at and passed on.
 */
import fc from "fast-check";
import type { LogEvent } from "../../../src/log/event.ts";
import { randomNumbers } from "../../analysis/fixtures/session.ts";
import { day } from "../../share/days.ts";
import { heldBytes } from "../held-bytes.ts";
import { tryInvitation, tryMessages } from "./board.ts";
import { type Damage, FILES_AND_LINKS, type InputTrial } from "./inputs.ts";
import { mutate } from "./mutate.ts";
import { tryWords } from "./words.ts";

export interface FuzzReport {
  inputs: number;
  taken: number;
  refused: number;
  /** What went wrong, with the input that did it; there should be none. */
  faults: string[];
  /** The dearest input, by what the whole process worked for it; milliseconds. */
  slowest: Cost & { input: number };
  /** What was still held at the end, less what was after the first tenth; bytes. */
  grownBytes: number;
}

/** How many made-up days the inputs are damaged from. */
const DAYS = 400;
const TRIALS: readonly InputTrial[] = [...FILES_AND_LINKS, tryInvitation, tryMessages];
/** Of so many inputs one is left whole, and one is a vocabulary, which takes longest. */
const WHOLE = 20;
const VOCABULARY = 200;
/** A page that works for longer is taken for dead. */
const HANG_MS = 1000;
/** What took longer is tried again: clearing up after others, and compiling, are not its own. */
const SUSPECT_MS = 200;
/** Held for good by an input, it would be more than a phone has, over a season of them. */
const MOST_GROWN_BYTES = 30_000_000;
const US_PER_MS = 1000;

/** @param seed gives the same inputs again */
export async function fuzzStrangersInput(inputs: number, seed: number): Promise<FuzzReport> {
  const days = fc.sample(day, { numRuns: DAYS, seed });
  const faults: string[] = [];
  const slowest = { input: 0, cpuMs: 0, wallMs: 0 };
  const report: FuzzReport = { inputs, taken: 0, refused: 0, faults, slowest, grownBytes: 0 };
  let settled = 0;
  for (let n = 0; n < inputs; n += 1) {
    const { outcome, ...cost } = await tryInput(n, seed, days);
    if (typeof outcome === "string") faults.push(outcome);
    else report[outcome.isTaken ? "taken" : "refused"] += 1;
    const again = cost.cpuMs > SUSPECT_MS ? await tryInput(n, seed, days) : cost;
    const { cpuMs, wallMs } = again.cpuMs < cost.cpuMs ? again : cost;
    if (cpuMs > slowest.cpuMs) Object.assign(slowest, { input: n, cpuMs, wallMs });
    if (n === Math.floor(inputs / 10)) settled = heldBytes();
  }
  report.grownBytes = heldBytes() - settled;
  if (slowest.cpuMs > HANG_MS) faults.push(`input ${slowest.input} took ${slowest.cpuMs} ms`);
  if (report.grownBytes > MOST_GROWN_BYTES) faults.push(`${report.grownBytes} bytes stay held`);
  return report;
}

interface Cost {
  cpuMs: number;
  wallMs: number;
}

/** One input, by its number alone, so that it can be had again without those before it. */
async function tryInput(
  n: number,
  seed: number,
  days: readonly LogEvent[][],
): Promise<Cost & { outcome: { isTaken: boolean } | string }> {
  const random = randomNumbers(seed * 1_000_003 + n);
  const events = days[Math.floor(random() * days.length)] ?? [];
  const ofAll = TRIALS[n % TRIALS.length] ?? tryWords;
  const trial = n % VOCABULARY === 0 ? tryWords : ofAll;
  const damage: Damage = random() < 1 / WHOLE ? (text) => text : (text) => mutate(text, random);
  const [before, started] = [process.cpuUsage(), performance.now()];
  const outcome = await trial(events, damage, random).then(
    (isTaken) => pollution() ?? { isTaken },
    (cause) => `input ${n}: ${cause?.stack ?? cause}`,
  );
  const { user, system } = process.cpuUsage(before);
  return { outcome, cpuMs: (user + system) / US_PER_MS, wallMs: performance.now() - started };
}

const pollution = (): string | undefined =>
  "polluted" in {} ? "Every object got a new field." : undefined;
