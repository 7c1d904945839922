import { expect, test } from "vitest";
import { tryMerging } from "./merging.ts";

const CASES = 400;

test("two phones' events, in any order and some of them twice, give one session on both", async () => {
  const { faults, ...met } = await tryMerging(CASES, 1);
  expect(faults).toEqual([]);
  // Cases that try nothing would prove nothing.
  for (const [what, cases] of Object.entries(met)) {
    expect([what, cases > CASES / 4]).toEqual([what, true]);
  }
});
