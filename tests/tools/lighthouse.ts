/** Prints what Lighthouse makes of the built app: `npm run lighthouse`. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildInto } from "../browser/build-app.ts";
import { judge } from "../browser/lighthouse-run.ts";

const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
try {
  buildInto(folder);
  const { scores, faults } = await judge(folder);
  for (const [category, score] of Object.entries(scores)) console.log(`${category}: ${score}`);
  for (const fault of faults) console.log(`  ${fault}`);
} finally {
  rmSync(folder, { recursive: true });
}
