import { describe, expect, test } from "vitest";
import { meanOf } from "../../src/analysis/rates/gamma-poisson.ts";
import { bestOver } from "../../src/analysis/seasons/over-sessions.ts";
import { type PastSession, pastOf } from "../../src/analysis/seasons/past.ts";
import { commonPrior, shrunk, shrunkRate } from "../../src/analysis/seasons/shrinkage.ts";
import { startAt } from "../../src/analysis/seasons/start.ts";
import type { EntryStatement } from "../../src/log/event.ts";
import { at, emptySession, randomNumbers, sessionOf } from "./fixtures/session.ts";

const groups = [
  { count: 40, exposure: 10 },
  { count: 12, exposure: 10 },
  { count: 4, exposure: 0.5 },
  { count: 20, exposure: 8 },
];

describe("shrinkage", () => {
  test("moments by hand (Marshall 1991)", () => {
    const two = [
      { count: 40, exposure: 10 },
      { count: 10, exposure: 10 },
    ];
    // Common rate 2.5; scatter (10·1.5² + 10·1.5²)/20 = 2.25; by counting 2.5/10; between 2.
    const prior = commonPrior(two);
    expect(prior.shape).toBeCloseTo(2.5 ** 2 / 2, 12);
    expect(meanOf(prior)).toBeCloseTo(2.5, 12);
  });

  test("every rate lies between its own and the common one, the least fished nearest to it", () => {
    const prior = commonPrior(groups);
    const common = meanOf(prior);
    const pulls = groups.map((group) => {
      const own = group.count / group.exposure;
      const drawn = meanOf(shrunk(group, prior));
      expect(drawn).toBeGreaterThanOrEqual(Math.min(own, common));
      expect(drawn).toBeLessThanOrEqual(Math.max(own, common));
      return (drawn - own) / (common - own);
    });
    expect(pulls.indexOf(Math.max(...pulls))).toBe(2);
  });

  test("no events, no groups fished and a single one still have a prior", () => {
    expect(
      commonPrior([
        { count: 0, exposure: 3 },
        { count: 0, exposure: 3 },
      ]),
    ).toEqual({ shape: 1, rate: 6 });
    expect(
      commonPrior([
        { count: 6, exposure: 3 },
        { count: 0, exposure: 0 },
      ]),
    ).toEqual({ shape: 1, rate: 0.5 });
  });

  test("alike groups are not taken for one", () => {
    expect(commonPrior(Array(5).fill({ count: 10, exposure: 5 })).shape).toBeCloseTo(0.4 ** -2, 9);
  });

  test("two fish are too few to tell, with limits", () => {
    const rate = shrunkRate({ count: 2, exposure: 1 }, commonPrior(groups));
    expect(rate.tells).toBe(false);
    expect(rate.lower).toBeGreaterThan(0);
    expect(Number.isFinite(rate.upper)).toBe(true);
  });

  test("over many groups it errs less than the raw rates do (simulated)", () => {
    const random = randomNumbers(13);
    const poisson = (mean: number) => {
      let count = -1;
      for (let product = 1; product > Math.exp(-mean); count += 1) product *= 1 - random();
      return count;
    };
    let [raw, drawn] = [0, 0];
    for (let trial = 0; trial < 300; trial += 1) {
      const truths = Array.from({ length: 8 }, () => 2 + 4 * random());
      const seen = truths.map((truth) => {
        const exposure = 0.5 + 3 * random();
        return { count: poisson(truth * exposure), exposure };
      });
      const prior = commonPrior(seen);
      for (const [place, group] of seen.entries()) {
        const truth = truths[place] ?? 0;
        raw += (group.count / group.exposure - truth) ** 2;
        drawn += (meanOf(shrunk(group, prior)) - truth) ** 2;
      }
    }
    expect(drawn).toBeLessThan(0.75 * raw);
  });
});

describe("over sessions", () => {
  const fish: EntryStatement = { kind: "fish", weightG: 500 };
  const session = (depthMm: number, count: number, minutes: number) =>
    sessionOf(
      [
        [0, { kind: "change", depthMm }],
        ...Array.from(
          { length: count },
          (_, place) => [((place + 1) * minutes) / (count + 1), fish] as const,
        ),
      ],
      { endsAfter: minutes },
    );

  test("one lucky quarter of an hour does not lead", () => {
    const steady = [25, 24, 26].map((count) => session(400, count, 240));
    const { verdict, ranked } = bestOver(
      "depth",
      [...steady, session(900, 3, 15), session(600, 10, 240)],
      at(999),
    );
    const [steadyDepth, lucky] = [400, 900].map((depth) =>
      ranked.find(({ level }) => level === depth),
    );
    // Raw it is 12 an hour against 6.
    expect(verdict).not.toBe("clear");
    expect(lucky).toMatchObject({ sessions: 1, fish: 3, fishPerHour: { tells: false } });
    expect(steadyDepth).toMatchObject({
      sessions: 3,
      hours: 12,
      fish: 75,
      fishPerHour: { tells: true },
    });
  });

  test("a steady difference does", () => {
    const sessions = [
      session(400, 40, 240),
      session(400, 44, 240),
      session(900, 12, 240),
      session(900, 14, 240),
    ];
    expect(bestOver("depth", sessions, at(999))).toMatchObject({
      verdict: "clear",
      ranked: [{ level: 400, sessions: 2 }, { level: 900 }],
    });
  });

  test("nothing fished or two fish tell nothing", () => {
    for (const sessions of [
      [],
      [emptySession],
      [session(400, 0, 60)],
      [session(400, 2, 60), session(900, 0, 60)],
    ]) {
      expect(bestOver("depth", sessions, at(999)).verdict).toBe("too-few");
    }
  });
});

describe("where to start", () => {
  const fish: EntryStatement = { kind: "fish", weightG: 500 };
  const past = (id: string, water: string, depthMm: number, count: number): PastSession => {
    const lines = Array.from(
      { length: count },
      (_, place) => [((place + 1) * 240) / (count + 1), fish] as const,
    );
    const session = sessionOf([[0, { kind: "change", depthMm, bait: "corn" }], ...lines], {
      endsAfter: 240,
      plan: { water },
    });
    const made = pastOf({ ...session, id }, at(999));
    if (!made) throw new Error("The session has not started.");
    return made;
  };
  const osier = [past("a", "Osier Lake", 400, 40), past("b", "Osier Lake", 900, 12)];
  const marram = [past("c", "Marram Water", 900, 60), past("d", "Marram Water", 900, 64)];

  test("a past is plain data that comes back whole from a store", () => {
    const [one] = osier;
    expect(one).toMatchObject({
      id: "a",
      startedAt: at(0),
      water: "Osier Lake",
      trials: { depth: [{ level: 400, fish: 40, hours: 4 }], bait: [{ level: "corn", fish: 40 }] },
    });
    expect(JSON.parse(JSON.stringify(one))).toEqual(one);
    expect(pastOf(emptySession, at(9))).toBeUndefined();
  });

  test("the water's own sessions speak before those of others", () => {
    const start = startAt("Osier Lake", [...osier, ...marram]);
    expect(start).toMatchObject({ water: "Osier Lake", sessions: 2, hours: 8 });
    expect(start.depth).toMatchObject({ verdict: "clear", ranked: [{ level: 400 }, {}] });
    expect(start.bait.verdict).toBe("alone");
  });

  test.each([
    ["a water never fished", "Reed Pool"],
    ["no water named", undefined],
  ])("%s has those of all", (_, water) => {
    const start = startAt(water, [...osier, ...marram]);
    expect(start.water).toBeUndefined();
    expect(start.depth.ranked[0]).toMatchObject({ level: 900, sessions: 3 });
  });

  test("no session says nothing", () => {
    const start = startAt("Osier Lake", []);
    expect(start).toMatchObject({ sessions: 0, hours: 0 });
    expect([start.depth, start.rig, start.bait].map(({ verdict }) => verdict)).toEqual(
      Array(3).fill("too-few"),
    );
  });
});
