/** Promise 3 at length: hearing comes back, over eight hours. */
import type { Line, Trial } from "../trial.ts";
import { faultsIn } from "./account.ts";
import { type SoakReport, soak } from "./soak.ts";

const HOURS = 8;
const BYTES_PER_MB = 1_000_000;

export const run: Trial = async ({ seed }) => {
  const lines: Line[] = [];
  for (const android of [false, true]) {
    const report = await soak({ seed, android, hours: HOURS });
    lines.push({
      promise: "Hearing comes back",
      tried: `${HOURS} hours with ${android ? "a phone's" : "a desktop's"} recogniser, mishaps at random`,
      cases: [...report.mishaps.values()].reduce((sum, times) => sum + times, 0),
      faults: faultsIn(report),
      figures: figuresOf(report),
    });
  }
  return lines;
};

function figuresOf({ said, reported, events, faults, bytes }: SoakReport): string {
  const [first = 0] = bytes;
  const last = bytes.at(-1) ?? 0;
  const megabytes = (held: number) => (held / BYTES_PER_MB).toFixed(1);
  return `${said} said, ${[...reported].filter((word) => /\d/.test(word)).length} heard, ${events.length} in the log; ${faults} faults of the browser; heap ${megabytes(first)} MB after an hour, ${megabytes(last)} MB after ${bytes.length}`;
}
