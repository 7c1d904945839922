/** Promise 4 at length: merging is safe. */
import type { Trial } from "../trial.ts";
import { tryMerging } from "./merging.ts";

const CASES = 10_000;

export const run: Trial = async ({ seed }) => {
  const { faults, withdrawn, corrected, pieces, repeated } = await tryMerging(CASES, seed);
  return [
    {
      promise: "Merging is safe",
      tried:
        "two phones' events in any order, some twice, folded as they come and whole, through both stores",
      cases: CASES,
      faults,
      figures: `with something taken back ${withdrawn}, put right ${corrected}, split off ${pieces}, come twice ${repeated}`,
    },
  ];
};
