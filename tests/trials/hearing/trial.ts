/** Promise 3 at length: hearing comes back, over eight hours. */
import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import type { Line, Trial } from "../trial.ts";
import type { Told } from "./alone.ts";

const HOURS = 8;
const ALONE = fileURLToPath(new URL("alone.ts", import.meta.url));

export const run: Trial = async ({ seed }) => {
  const lines: Line[] = [];
  for (const kind of ["desktop", "phone"]) {
    const args = ["--import", "tsx", ALONE, `${seed}`, `${HOURS}`, kind];
    const { stdout } = await promisify(execFile)(process.execPath, args);
    const { mishaps, faults, figures } = JSON.parse(stdout) as Told;
    lines.push({
      promise: "Hearing comes back",
      tried: `${HOURS} hours with a ${kind}'s recogniser, mishaps at random`,
      ...{ cases: mishaps, faults, figures },
    });
  }
  return lines;
};
