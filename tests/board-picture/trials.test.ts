import fc from "fast-check";
import { expect, test } from "vitest";
import { exposuresBy } from "../../src/analysis/effort/exposure.ts";
import { RunningTrials } from "../../src/board/picture/trials.ts";
import { POOLED_FACTORS } from "../../src/board/picture/view.ts";
import type { EntryStatement, LogEvent } from "../../src/log/event.ts";
import { foldSession, SessionFold } from "../../src/log/fold.ts";
import { act, at, change, fish } from "./script.ts";

const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  fc.constantFrom(fish(400), fish(undefined, 3), { kind: "loss", cause: "off" } as const),
  fc.constantFrom(
    change({ depthMm: 300 }),
    change({ depthMm: 620, bait: "maggot" }),
    change({ rig: "2" }),
    change({ rig: "1", bait: "pellet" }),
  ),
  fc.constantFrom(act("start"), act("pause"), act("resume"), act("stop")),
);

const events = fc.array(fc.tuple(statement, fc.nat(30)), { maxLength: 40 }).map((list) => {
  let minute = 0;
  return list.map(([said, wait], n): LogEvent => {
    minute += wait;
    return {
      ...{ v: 1, id: `e${n}`, session: "s", device: "phone", seq: n + 1, verdict: "log" },
      ...{ at: at(minute), body: { kind: "entry", statement: said } },
    };
  });
});

/** What the sums over a whole session make of it. */
function wholeOf(list: readonly LogEvent[], now: number) {
  const session = foldSession("s", list);
  return POOLED_FACTORS.map((factor) =>
    exposuresBy(factor, session, now)
      .filter(({ level, fish, hours }) => level !== undefined && fish + hours > 0)
      .map(({ level, fish, hours }) => [level, fish, Number(hours.toFixed(9))])
      .sort(),
  );
}

const written = (trials: RunningTrials, now: number) =>
  POOLED_FACTORS.map((factor) =>
    trials
      .upTo(now)
      [factor].filter(({ fish, hours }) => fish + hours > 0)
      .map(({ level, fish, hours }) => [level, fish, Number(hours.toFixed(9))])
      .sort(),
  );

test("carried on entry by entry, it is what the sums over the whole session say", () => {
  fc.assert(
    fc.property(events, (list) => {
      const fold = new SessionFold("s");
      const trials = new RunningTrials();
      list.forEach((one, n) => {
        const now = one.at + 60_000;
        trials.follow(fold.add(one).session);
        expect(written(trials, now)).toEqual(wholeOf(list.slice(0, n + 1), now));
      });
    }),
    { numRuns: 300 },
  );
});

test("a correction has it added up again", () => {
  const [first, ...rest] = [
    act("start"),
    change({ depthMm: 300 }),
    fish(400),
    fish(500),
    act("stop"),
  ].map(
    (said, n): LogEvent => ({
      ...{ v: 1, id: `e${n}`, session: "s", device: "phone", seq: n + 1, verdict: "log" },
      ...{ at: at(n * 10), body: { kind: "entry", statement: said } },
    }),
  );
  const fold = new SessionFold("s").add(first as LogEvent).addAll(rest);
  const trials = new RunningTrials().follow(fold.session);
  expect(trials.upTo(at(40)).depth).toEqual([{ level: 300, fish: 2, hours: 0.5 }]);
  const taken: LogEvent = { ...(first as LogEvent), id: "back", seq: 9, at: at(50) };
  fold.add({ ...taken, body: { kind: "withdraw", targets: ["e2"] } });
  expect(trials.follow(fold.session).upTo(at(60)).depth).toEqual([
    { level: 300, fish: 1, hours: 0.5 },
  ]);
});

test("half a day without a word was not fished, as where a clock was put right", () => {
  const said = [
    [0, act("start")],
    [0, change({ depthMm: 300 })],
    [60, fish(400)],
    [60 * 24 * 365, fish(400)],
    [60 * 24 * 365 + 60, act("stop")],
  ] as const;
  const fold = new SessionFold("s").addAll(
    said.map(
      ([minute, statement], n): LogEvent => ({
        ...{ v: 1, id: `e${n}`, session: "s", device: "phone", seq: n + 1, verdict: "log" },
        ...{ at: at(minute), body: { kind: "entry", statement } },
      }),
    ),
  );
  const trials = new RunningTrials().follow(fold.session);
  expect(trials.upTo(at(60 * 24 * 365 + 60)).depth).toEqual([{ level: 300, fish: 2, hours: 2 }]);
});
