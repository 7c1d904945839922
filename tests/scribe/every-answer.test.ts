/** Every question, asked of every log that could trip it: an answer a listener can make sense of. */
import { describe, expect, test } from "vitest";
import { QUESTIONS } from "../../grammar/statement.ts";
import { Running } from "../../src/analysis/running.ts";
import { type PastSession, pastOf } from "../../src/analysis/seasons/past.ts";
import type { EntryStatement, Plan } from "../../src/log/event.ts";
import type { Session } from "../../src/log/session.ts";
import { answer } from "../../src/scribe/answers/answer.ts";
import { biasOf, hasOwnAnswer } from "../../src/scribe/answers/asking.ts";
import { DEFAULT_SETTINGS } from "../../src/scribe/settings.ts";
import { at, emptySession, sessionOf } from "../analysis/fixtures/session.ts";

const full: Plan = {
  water: "Osier Lake",
  startsAt: at(-10),
  endsAt: at(240),
  targetG: 20_000,
  netLimitG: 15_000,
  baitLimitsG: { pellet: 100 },
  fallSpeeds: { corn: 0.1 },
};
const fish: EntryStatement = { kind: "fish", weightG: 500 };
const change: EntryStatement = { kind: "change", rig: "1", depthMm: 600, bait: "corn", hook: 16 };
const many = (count: number, every: number, statement: EntryStatement = fish) =>
  Array.from({ length: count }, (_, place) => [place * every + 1, statement] as const);
/** Drops with a bite after two minutes, one after another. */
const drops = (count: number) =>
  Array.from({ length: count }, (_, place) => [
    [5 * place + 1, { kind: "drop" }] as const,
    [5 * place + 3, { kind: "sign", sort: "bite" }] as const,
  ]).flat();

const LOGS: Readonly<Record<string, { session: Session; now?: number }>> = {
  "nothing at all": { session: emptySession },
  "a plan and no start": { session: { ...emptySession, plan: full }, now: at(-60) },
  "started this instant": { session: sessionOf([], { plan: full }), now: at(0) },
  "a clock that went back behind the start": {
    session: sessionOf([], { plan: full }),
    now: at(-90),
  },
  "ten hours with nothing": { session: sessionOf([], { plan: {} }), now: at(600) },
  "ten hours with nothing, long after the end": {
    session: sessionOf([[1, change]], { plan: full }),
    now: at(600),
  },
  "two fish": { session: sessionOf(many(2, 5), { plan: full }) },
  "fish of no weight": { session: sessionOf(many(12, 5, { kind: "fish" }), { plan: full }) },
  "fish of hardly any weight": {
    session: sessionOf(many(12, 5, { kind: "fish", weightG: 0.001 }), { plan: full }),
  },
  "one set-up": { session: sessionOf([[0, change], ...many(12, 5)], { plan: full }) },
  "two set-ups": {
    session: sessionOf(
      [
        [0, change],
        ...many(12, 5),
        [70, { ...change, depthMm: 1200, rig: "2", bait: "worm", hook: 18, distanceMm: 11_000 }],
        [100, fish],
      ],
      { plan: full },
    ),
  },
  "all at one moment": { session: sessionOf(many(9, 0), { plan: full }), now: at(1) },
  "a pause that lasts from the start": {
    session: sessionOf(many(9, 5), { plan: full, pauses: [[0]] }),
  },
  "ended before it began": { session: sessionOf(many(9, 0), { plan: full, endsAfter: 0 }) },
  "a weighed net and an empty one": {
    session: sessionOf([...many(12, 5), [70, { kind: "net" }]], { plan: full, weighed: { 1: 0 } }),
  },
  "drops with bites": { session: sessionOf([[0, change], ...drops(12)], { plan: full }) },
  "drops without a bite": {
    session: sessionOf([[0, change], ...many(12, 5, { kind: "drop" })], { plan: full }),
  },
  "target reached": {
    session: sessionOf(many(12, 5, { kind: "fish", weightG: 5000 }), { plan: full }),
  },
};

const past = (id: string, depthMm: number, count: number): PastSession => {
  const session = sessionOf([[0, { ...change, depthMm }], ...many(count, 5)], {
    plan: full,
    endsAfter: 240,
    weighed: { 1: 600 * count },
  });
  const made = pastOf({ ...session, id }, at(240));
  if (!made) throw new Error("Not started.");
  return made;
};
const PASTS: Readonly<Record<string, readonly PastSession[]>> = {
  "no earlier session": [],
  "two earlier sessions": [past("a", 600, 40), past("b", 1200, 9)],
  "an earlier session with nothing": [past("a", 600, 0)],
};

const NONSENSE = /NaN|Infinity|undefined|null|-\d|\s\s|\. \.|\.\.|^$/;
/** As long as a breath lasts, in letters; our own choice. */
const ONE_BREATH = 170;

describe.each(Object.entries(LOGS))("%s", (_, { session, now = at(120) }) => {
  test.each(QUESTIONS)("%s", (what) => {
    for (const earlier of Object.values(PASTS)) {
      for (const before of [undefined, ...QUESTIONS.filter(hasOwnAnswer)]) {
        const sums = Running.over(session);
        const bias = biasOf({ sums, past: earlier });
        const units = DEFAULT_SETTINGS;
        const asking = { session, sums, past: earlier, bias, now, units };
        const { short, full } = answer(what, before ? { ...asking, before } : asking);
        for (const words of [short, full]) {
          expect(words).not.toMatch(NONSENSE);
          expect(words).toMatch(/^[A-Z0-9“].*\.$/);
        }
        expect(short.length).toBeLessThan(ONE_BREATH);
        if (hasOwnAnswer(what)) break;
      }
    }
  });
});
