/** The long form of `tests/trials/fuzz.ts`. Arguments: how many inputs, and the seed. */
import { fuzzStrangersInput } from "../trials/fuzz.ts";

const [inputs = 200_000, seed = 1] = process.argv.slice(2).map(Number);
const { taken, refused, faults, slowestMs } = await fuzzStrangersInput(inputs, seed);
console.log(
  `${inputs} inputs (seed ${seed}): ${taken} taken in whole, ${refused} refused in a sentence, ${faults.length} faults; the slowest took ${slowestMs.toFixed(0)} ms.`,
);
for (const fault of faults.slice(0, 20)) console.log(fault);
if (faults.length > 0) process.exitCode = 1;
