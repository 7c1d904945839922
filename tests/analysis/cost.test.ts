import { expect, test } from "vitest";
import { bestIn } from "../../src/analysis/best.ts";
import { biteTimes } from "../../src/analysis/bites/drops.ts";
import { sessionChange } from "../../src/analysis/change/session-change.ts";
import { moodAt, watchOf } from "../../src/analysis/change/watch.ts";
import { paceOf } from "../../src/analysis/pace.ts";
import { currentRate } from "../../src/analysis/rate.ts";
import { catchRates } from "../../src/analysis/rates/catch-rates.ts";
import { breachesOf } from "../../src/analysis/rules/breaches.ts";
import { UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, randomNumbers, sessionOf } from "./fixtures/session.ts";

/** Eight hours and 2,000 entries: drops, fish with and without a weight, changes, feeds, losses. */
function longSession() {
  const random = randomNumbers(1);
  const lines = Array.from({ length: 2000 }, (_, place): [number, EntryStatement] => {
    const minute = (place * 480) / 2000;
    const draw = random();
    if (draw < 0.35) return [minute, { kind: "drop" }];
    if (draw < 0.6)
      return [
        minute,
        { kind: "fish", species: draw < 0.5 ? "carp" : "f1", weightG: 300 + 900 * random() },
      ];
    if (draw < 0.65)
      return [minute, { kind: "fish", species: "carp", lengthMm: 300 + 100 * random() }];
    if (draw < 0.7) return [minute, { kind: "fish" }];
    if (draw < 0.75) return [minute, { kind: "loss", cause: "pulled" }];
    if (draw < 0.85)
      return [minute, { kind: "change", depthMm: 300 + 100 * Math.floor(random() * 10) }];
    return [minute, { kind: "feed", amountG: 20, bait: "pellet" }];
  });
  return sessionOf(lines, {
    plan: { endsAt: at(600), targetG: 900_000, netLimitG: 27_000, baitLimitsG: { pellet: 2000 } },
    pauses: [
      [100, 110],
      [200, 215],
      [300, 320],
    ],
  });
}

/** The least of some runs, so that whatever else the machine does is left out. */
function leastMs(run: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 60; turn += 1) {
    const begun = performance.now();
    run();
    least = Math.min(least, performance.now() - begun);
  }
  return least;
}

const session = longSession();
const now = at(480);

test.each([
  ["catch rates by depth", () => catchRates("depth", session, now)],
  ["best depth", () => bestIn("depth", session, now)],
  ["rate now", () => currentRate(session, now)],
  ["pace", () => paceOf(session, now, UNKNOWN_BIAS)],
  ["rules", () => breachesOf(session, now, UNKNOWN_BIAS, 0.05)],
  ["bite times by depth", () => biteTimes("depth", session, now)],
  ["change", () => sessionChange(session, now)],
  ["watch", () => moodAt(watchOf(session, now), 480 * 60_000)],
])("%s over 2,000 entries takes less than 5 ms", (_, run) => {
  expect(leastMs(run)).toBeLessThan(5);
});
