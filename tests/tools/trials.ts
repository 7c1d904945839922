/**
 * The long form of the trials of what the app promises; prints a table, and fails if a promise does
 * not hold. Takes which trials to run (all), `--seed` (1) and `--kills` (200).
 */
import { parseArgs } from "node:util";
import { run as fuzz } from "../trials/fuzz/trial.ts";
import { run as hearing } from "../trials/hearing/trial.ts";
import { run as kill } from "../trials/kill/trial.ts";
import { run as merging } from "../trials/merging/trial.ts";
import { run as oldLogs } from "../trials/old-logs/trial.ts";
import { withServedApp } from "../trials/served-app.ts";
import { run as storage } from "../trials/storage/trial.ts";
import { run as tabs } from "../trials/tabs/trial.ts";
import type { Line, Trial, TrialOptions } from "../trials/trial.ts";

/** In the order of the promises. */
const TRIALS: Readonly<Record<string, Trial>> = {
  kill,
  storage,
  hearing,
  merging,
  tabs,
  "old-logs": oldLogs,
  fuzz,
};

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: "string", default: "1" },
    kills: { type: "string", default: "200" },
  },
});

const unknown = positionals.filter((name) => !(name in TRIALS));
if (unknown.length > 0 || !(Number(values.seed) >= 0) || !(Number(values.kills) >= 1)) {
  console.error(
    `npm run trials -- [${Object.keys(TRIALS).join("|")}]… [--seed 1] [--kills 200]: what is “${process.argv.slice(2).join(" ")}”?`,
  );
  process.exit(2);
}
const names = positionals.length > 0 ? positionals : Object.keys(TRIALS);

await withServedApp(async (url) => {
  const options = { url, seed: Number(values.seed), kills: Number(values.kills) };
  console.log(`Seed ${options.seed}.\n`);
  console.log("| promise | tried | cases | faults | minutes | figures |");
  console.log("| --- | --- | ---: | ---: | ---: | --- |");
  for (const name of names) await print(name, options);
});

async function print(name: string, options: TrialOptions): Promise<void> {
  const started = performance.now();
  const lines = (await TRIALS[name]?.(options).catch((cause) => [brokenOff(name, cause)])) ?? [];
  const minutes = ((performance.now() - started) / 60_000).toFixed(1);
  for (const [place, { promise, tried, cases, faults, figures = "" }] of lines.entries()) {
    const row = [promise, tried, cases, faults.length, place === 0 ? minutes : "", figures];
    console.log(`| ${row.join(" | ")} |`);
    for (const fault of faults.slice(0, 20)) console.error(`  ${fault}`);
    if (faults.length > 0) process.exitCode = 1;
  }
}

/** A trial that ends before its time has shown nothing. */
const brokenOff = (name: string, cause: unknown): Line => ({
  promise: name,
  tried: "broke off",
  cases: 0,
  faults: [cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)],
});
