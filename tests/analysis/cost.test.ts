import { expect, test } from "vitest";
import { looksOf, SUMS } from "./fixtures/long-session.ts";

test.each(Object.entries(SUMS))(
  "%s looks at each of 2,000 entries a few times, not at each for each",
  (_, run) => {
    expect(looksOf(2000, run)).toBeGreaterThanOrEqual(2000);
    expect(looksOf(2000, run)).toBeLessThan(8 * 2000);
  },
);
