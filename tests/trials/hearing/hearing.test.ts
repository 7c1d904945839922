import { expect, test } from "vitest";
import { faultsIn } from "./account.ts";
import { soak } from "./soak.ts";

/** Long enough for each mishap to come twice. */
const HOURS = 3;

test.each([false, true])(
  "hours of talk and mishaps: nothing heard is lost or doubled (phone %s)",
  async (android) => {
    const report = await soak({ seed: 1, android, hours: HOURS });
    expect(faultsIn(report)).toEqual([]);
    expect(report.events.length).toBeGreaterThan(200);
    expect(report.faults).toBeGreaterThan(20);
  },
);
