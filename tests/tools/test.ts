/**
 * Runs every check of the project in order, the quick ones first, and stops at the first that
 * fails. The last line it prints counts the tests that were run.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

interface Count {
  passed: number;
  failed: number;
  skipped: number;
}

/** The npm script of each step, and whether it runs tests that can be counted. */
const STEPS = [
  { script: "types", counted: false },
  { script: "lint", counted: false },
  { script: "house", counted: true },
  { script: "unit", counted: true },
  { script: "browser", counted: true },
];

const NONE: Count = { passed: 0, failed: 0, skipped: 0 };

function run(script: string, ...options: string[]): boolean {
  const args = ["run", "--silent", script, ...(options.length ? ["--", ...options] : [])];
  return spawnSync("npm", args, { stdio: ["ignore", "inherit", "inherit"] }).status === 0;
}

function runCounted(script: string): { ok: boolean; count: Count } {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  const report = join(folder, "report.json");
  try {
    const ok = run(script, "--reporter=default", "--reporter=json", `--outputFile.json=${report}`);
    return { ok, count: readCount(report) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A run that broke off before it could report has counted nothing. */
function readCount(report: string): Count {
  try {
    const found = JSON.parse(readFileSync(report, "utf8"));
    return {
      passed: found.numPassedTests,
      failed: found.numFailedTests,
      skipped: found.numPendingTests + found.numTodoTests,
    };
  } catch {
    return NONE;
  }
}

/** What failed without one test to blame (a type, a file that doesn't load) counts as one. */
function atLeastOneFailed(count: Count): Count {
  return { ...count, failed: Math.max(count.failed, 1) };
}

function add(a: Count, b: Count): Count {
  return {
    passed: a.passed + b.passed,
    failed: a.failed + b.failed,
    skipped: a.skipped + b.skipped,
  };
}

function say({ passed, failed, skipped }: Count): string {
  return `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ""}`;
}

let total = NONE;
for (const { script, counted } of STEPS) {
  console.log(`\n== ${script}`);
  const { ok, count } = counted ? runCounted(script) : { ok: run(script), count: NONE };
  total = add(total, ok ? count : atLeastOneFailed(count));
  if (!ok) {
    console.log(`\nThe step "${script}" failed; run it alone with: npm run ${script}`);
    process.exitCode = 1;
    break;
  }
}
console.log(say(total));
