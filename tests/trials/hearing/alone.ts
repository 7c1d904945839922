/** One soak in a process of its own, where nothing else is held. Arguments: seed, hours, "phone" or "desktop". */
import { faultsIn } from "./account.ts";
import { type SoakReport, soak } from "./soak.ts";
import { numberIn } from "./talk.ts";

export interface Told {
  mishaps: number;
  faults: readonly string[];
  figures: string;
}

const BYTES_PER_MB = 1_000_000;
const MS_PER_S = 1000;

const [seed = "1", hours = "8", kind] = process.argv.slice(2);
const report = await soak({
  seed: Number(seed),
  hours: Number(hours),
  android: kind === "phone",
});
const told: Told = {
  mishaps: [...report.mishaps.values()].reduce((sum, times) => sum + times, 0),
  faults: faultsIn(report),
  figures: figuresOf(report),
};
console.log(JSON.stringify(told));

function figuresOf({ said, reported, events, faults, deafMs, bytes }: SoakReport): string {
  const heard = [...reported].filter((word) => numberIn(word)).length;
  const megabytes = (held = 0) => (held / BYTES_PER_MB).toFixed(1);
  return `${said} said, ${heard} heard, ${events.length} in the log; ${faults} faults of the browser; deaf with nothing in the way for ${Math.round(deafMs / MS_PER_S)} s at most; heap ${megabytes(bytes[0])} MB after an hour, ${megabytes(bytes.at(-1))} MB after ${bytes.length}`;
}
