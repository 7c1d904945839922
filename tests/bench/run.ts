/**
 * Measures what the app costs and prints it as tables, for DEVELOPERS.md:
 * `npm run bench -- [--seed N] [--only reading,…] [--json FILE]`. All tables and figures also go
 * into the file, `bench.json` unless another is named.
 */
import { writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { parseArgs } from "node:util";
import budgets from "./budgets.json" with { type: "json" };
import { type Budgets, breaches } from "./budgets.ts";
import { type Measured, type Part, print, rounded } from "./part.ts";

const PARTS: Readonly<Record<string, () => Promise<Part>>> = {
  reading: () => import("./reading/reading.ts"),
  confirming: () => import("./confirming/confirming.ts"),
  "first-screen": () => import("./first-screen/first-screen.ts"),
  opening: () => import("./opening/opening.ts"),
  sums: () => import("./sums/sums.ts"),
  hearing: () => import("./hearing/hearing.ts"),
  "long-run": () => import("./long-run/long-run.ts"),
};

const { values } = parseArgs({
  options: {
    seed: { type: "string", default: "1" },
    only: { type: "string", default: Object.keys(PARTS).join(",") },
    json: { type: "string", default: "bench.json" },
  },
});

const load = () => rounded(loadavg()[0] ?? Number.NaN, 1);

async function run(name: string): Promise<Measured & { title: string; seconds: number }> {
  const loading = PARTS[name];
  if (!loading) throw new Error(`There is no part "${name}"; there are ${Object.keys(PARTS)}.`);
  const part = await loading();
  const [begun, loadBefore] = [performance.now(), load()];
  console.log(`### ${part.title}\n`);
  const measured = await part.measure({ seed: Number(values.seed) });
  for (const table of measured.tables) console.log(print(table));
  for (const breach of breaches((budgets as Budgets)[name] ?? {}, measured.figures))
    console.log(`Over budget: ${breach}\n`);
  const seconds = Math.round((performance.now() - begun) / 1000);
  console.log(`${seconds} s; load of the machine ${loadBefore} before, ${load()} after\n`);
  return { title: part.title, seconds, ...measured };
}

const machine = `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model}`;
const date = new Date().toISOString().slice(0, 10);
console.log(`npm run bench -- --seed ${values.seed}; ${machine}, ${date}\n`);
const parts: Record<string, unknown> = {};
for (const name of values.only.split(",")) {
  parts[name] = await run(name);
  // After each part, so that one that fails loses nothing of those before.
  writeFileSync(
    values.json,
    `${JSON.stringify({ seed: Number(values.seed), machine, date, parts }, null, 2)}\n`,
  );
}
