/** Strangers' input alone, at length. Arguments: how many inputs, and the seed. */
import { fuzzStrangersInput } from "../trials/fuzz/fuzz.ts";

const BYTES_PER_MB = 1_000_000;

const [inputs = 200_000, seed = 1] = process.argv.slice(2).map(Number);
const { taken, refused, faults, slowest, grownBytes } = await fuzzStrangersInput(inputs, seed);
console.log(
  `${inputs} inputs (seed ${seed}): ${taken} taken in whole, ${refused} refused in a sentence, ${faults.length} faults.`,
);
console.log(
  `The dearest, input ${slowest.input}, took ${slowest.cpuMs.toFixed(0)} ms of processor time (${slowest.wallMs.toFixed(0)} ms by the wall); ${(grownBytes / BYTES_PER_MB).toFixed(1)} MB more are held at the end than after the first tenth.`,
);
for (const fault of faults.slice(0, 20)) console.log(fault);
if (faults.length > 0) process.exitCode = 1;
