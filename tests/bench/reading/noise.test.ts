import { expect, test } from "vitest";
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { AS_STATED, noisy, QUIET } from "./noise.ts";

const LINE = "carp forty five centimetres two pounds";
const withNoise = (noise: Partial<typeof QUIET>, seed = 1) =>
  noisy(LINE, { ...QUIET, ...noise }, seededRandom(seed));

test("each kind of noise does what it says, and none does nothing", () => {
  expect(withNoise({})).toBe(LINE);
  expect(withNoise({ digits: 1 })).toBe("carp 45 centimetres 2 pounds");
  expect(withNoise({ units: 1 })).toMatch(/^carp forty five (cm|centimeters) two (lb|lbs|pound)$/);
  expect(withNoise({ homophones: 1 })).toMatch(/^carp forty five centimetres (to|too) pounds$/);
  expect(withNoise({ doubled: 1 })).toBe(
    "carp carp forty five forty five centimetres centimetres two two pounds pounds",
  );
  expect(withNoise({ dropped: 1 })).toBe("");
});

test("one seed makes one line, another another", () => {
  const made = [1, 1, 2, 3].map((seed) => noisy(LINE, AS_STATED, seededRandom(seed)));
  expect(made[0]).toBe(made[1]);
  expect(new Set(made).size).toBeGreaterThan(1);
});
