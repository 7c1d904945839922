import fc from "fast-check";
import { expect, test } from "vitest";
import { bestIn } from "../../src/analysis/best.ts";
import { biteTimes, dropsOf } from "../../src/analysis/bites/drops.ts";
import { logRank } from "../../src/analysis/bites/log-rank.ts";
import { sessionChange } from "../../src/analysis/change/session-change.ts";
import { watchOf } from "../../src/analysis/change/watch.ts";
import { FACTORS } from "../../src/analysis/effort/exposure.ts";
import { paceOf } from "../../src/analysis/pace.ts";
import { currentRate } from "../../src/analysis/rate.ts";
import { catchRates } from "../../src/analysis/rates/catch-rates.ts";
import { compareRates } from "../../src/analysis/rates/compare.ts";
import { breachesOf } from "../../src/analysis/rules/breaches.ts";
import { bestOver } from "../../src/analysis/seasons/over-sessions.ts";
import { biteDepths } from "../../src/analysis/sinking/session-bites.ts";
import { biasFrom, weighedNets } from "../../src/analysis/weights/bias.ts";
import { netRisks } from "../../src/analysis/weights/nets.ts";
import { totalOf } from "../../src/analysis/weights/total.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import type { Session } from "../../src/log/session.ts";
import { at, sessionOf } from "./fixtures/session.ts";

const constant = <T extends EntryStatement>(statement: T) => fc.constant<EntryStatement>(statement);
const grams = fc.double({ min: 0.1, max: 30_000, noNaN: true });
const millimetres = fc.double({ min: 1, max: 3000, noNaN: true });
const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  constant({ kind: "fish" }),
  grams.map((weightG): EntryStatement => ({ kind: "fish", weightG })),
  fc.record({
    kind: fc.constant("fish" as const),
    species: fc.constantFrom("carp", "eel"),
    lengthMm: millimetres,
    count: fc.integer({ min: 1, max: 40 }),
  }),
  constant({ kind: "drop" }),
  constant({ kind: "sign", sort: "missed" }),
  constant({ kind: "loss", cause: "off" }),
  constant({ kind: "net" }),
  millimetres.map((depthMm): EntryStatement => ({ kind: "change", depthMm, lashMm: depthMm })),
  fc.constantFrom("pellet", "corn").map((bait): EntryStatement => ({ kind: "change", bait })),
  grams.map((amountG): EntryStatement => ({ kind: "feed", amountG })),
);

const plan = {
  endsAt: at(240),
  targetG: 20_000,
  netLimitG: 15_000,
  lashLimitMm: 300,
  baitLimitsG: { pellet: 100 },
};
const sessions: fc.Arbitrary<Session> = fc
  .record({
    lines: fc.array(fc.tuple(fc.integer({ min: 0, max: 300 }), statement), { maxLength: 25 }),
    pause: fc.integer({ min: 0, max: 300 }),
    ended: fc.option(fc.integer({ min: 0, max: 300 })),
    weighedG: fc.option(fc.double({ min: 0, max: 30_000, noNaN: true })),
  })
  .map(({ lines, pause, ended, weighedG }) =>
    sessionOf(
      lines.toSorted(([one], [other]) => one - other),
      {
        plan,
        pauses: [[pause, pause + 15]],
        ...(ended === null ? {} : { endsAfter: ended }),
        ...(weighedG === null ? {} : { weighed: { 1: weighedG } }),
      },
    ),
  );

/** Where in a result something is not a number, as a path; what was put in is passed over. */
function notNumbers(result: unknown, path = ""): string[] {
  if (typeof result === "number") return Number.isNaN(result) ? [path] : [];
  if (typeof result !== "object" || result === null) return [];
  return Object.entries(result)
    .filter(([key]) => key !== "entries" && key !== "setUp")
    .flatMap(([key, value]) => notNumbers(value, `${path}.${key}`));
}

/** Intervals in a result that stand on their head. */
function upsideDown(result: unknown, path = ""): string[] {
  if (typeof result !== "object" || result === null) return [];
  const { lower, upper } = result as { lower?: number; upper?: number };
  const here = lower !== undefined && upper !== undefined && lower > upper ? [path] : [];
  return [
    ...here,
    ...Object.entries(result)
      .filter(([key]) => key !== "entries")
      .flatMap(([key, value]) => upsideDown(value, `${path}.${key}`)),
  ];
}

test("whatever the session, no sum gives NaN or limits the wrong way round", () => {
  fc.assert(
    fc.property(sessions, fc.integer({ min: -10, max: 400 }), (session, minute) => {
      const now = at(minute);
      const bias = biasFrom(weighedNets([session]));
      const rates = FACTORS.map((factor) => catchRates(factor, session, now));
      const [one, other] = rates[1] ?? [];
      const results = {
        rates,
        bias,
        compared: one && other && compareRates(one, other),
        best: FACTORS.map((factor) => bestIn(factor, session, now)),
        over: bestOver("depth", [session, session], now),
        bites: biteTimes("bait", session, now),
        logRank: logRank(dropsOf(session, now), dropsOf(session, now).slice(1)),
        change: sessionChange(session, now),
        watch: watchOf(session, now),
        pace: paceOf(session, now, bias),
        current: currentRate(session, now),
        breaches: breachesOf(session, now, bias, 0.05),
        nets: netRisks(session, bias, 0.05),
        total: totalOf(session, bias),
        depths: biteDepths(session, now, 0.05),
      };
      expect(notNumbers(results)).toEqual([]);
      expect(upsideDown(results)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});
