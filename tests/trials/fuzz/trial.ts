/** Promise 6 at length: strangers' input is harmless. */
import type { Trial } from "../trial.ts";
import { fuzzStrangersInput } from "./fuzz.ts";
import { costOf, SHAPES } from "./large.ts";

const PROMISE = "Strangers' input is harmless";
const INPUTS = 200_000;
const HANG_MS = 1000;
const BYTES_PER_MB = 1_000_000;

export const run: Trial = async ({ seed }) => {
  const report = await fuzzStrangersInput(INPUTS, seed);
  const { taken, refused, faults, slowest, grownBytes } = report;
  const damaged = {
    promise: PROMISE,
    tried: "links, logs, tables, vocabularies, invitations and messages, whole and damaged",
    cases: INPUTS,
    faults,
    figures: `${taken} taken, ${refused} refused; dearest ${slowest.cpuMs.toFixed(0)} ms of processor time, ${slowest.wallMs.toFixed(0)} by the wall; ${(grownBytes / BYTES_PER_MB).toFixed(1)} MB more held at the end than after the first tenth`,
  };
  const costs: [shape: string, foldMs: number, showMs: number][] = [];
  for (const [shape, bodyAt] of Object.entries(SHAPES)) {
    const { foldMs, showMs } = await costOf(bodyAt);
    costs.push([shape, foldMs, showMs]);
  }
  const slow = costs.filter(([, foldMs]) => foldMs > HANG_MS);
  const most = (place: 1 | 2) => Math.max(...costs.map((cost) => cost[place])).toFixed(0);
  const large = {
    promise: PROMISE,
    tried: "days of 20,000 events in the dearest shapes",
    cases: costs.length,
    faults: slow.map(([shape, foldMs]) => `${shape}: ${foldMs.toFixed(0)} ms to fold`),
    figures: `at most ${most(1)} ms of processor time to fold, ${most(2)} for all pictures, sums and the link`,
  };
  return [damaged, large];
};
