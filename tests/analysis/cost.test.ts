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
import type { Session } from "../../src/log/session.ts";
import { at, randomNumbers, sessionOf } from "./fixtures/session.ts";

/** Eight hours of so many entries: drops, fish with and without a weight, changes, feeds, losses. */
function longSession(size: number) {
  const random = randomNumbers(1);
  const lines = Array.from({ length: size }, (_, place): [number, EntryStatement] => {
    const minute = (place * 480) / size;
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

/** How often a sum looks at an entry of the session. */
function looksOf(size: number, run: (session: Session) => unknown): number {
  const session = longSession(size);
  let looks = 0;
  const entries = new Proxy(session.entries, {
    get(target, key, receiver) {
      if (typeof key === "string" && /^\d+$/.test(key)) looks += 1;
      return Reflect.get(target, key, receiver);
    },
  });
  run({ ...session, entries });
  return looks;
}

const now = at(480);

test.each([
  ["catch rates by depth", (session) => catchRates("depth", session, now)],
  ["best depth", (session) => bestIn("depth", session, now)],
  ["rate now", (session) => currentRate(session, now)],
  ["pace", (session) => paceOf(session, now, UNKNOWN_BIAS)],
  ["rules", (session) => breachesOf(session, now, UNKNOWN_BIAS, 0.05)],
  ["bite times by depth", (session) => biteTimes("depth", session, now)],
  ["change", (session) => sessionChange(session, now)],
  ["watch", (session) => moodAt(watchOf(session, now), 480 * 60_000)],
] satisfies [string, (session: Session) => unknown][])(
  "%s looks at each of 2,000 entries a few times, not at each for each",
  (_, run) => {
    expect(looksOf(2000, run)).toBeGreaterThanOrEqual(2000);
    expect(looksOf(2000, run)).toBeLessThan(8 * 2000);
  },
);
