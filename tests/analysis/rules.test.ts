import { describe, expect, test } from "vitest";
import { baitUsed } from "../../src/analysis/rules/bait.ts";
import { breachesOf } from "../../src/analysis/rules/breaches.ts";
import { gramsOf } from "../../src/analysis/units.ts";
import { UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import { at, type Extras, emptySession, sessionOf } from "./fixtures/session.ts";

const breaches = (lines: Parameters<typeof sessionOf>[0], extras: Extras = {}, minute = 60) =>
  breachesOf(sessionOf(lines, extras), at(minute), UNKNOWN_BIAS, 0.05);

describe("rules", () => {
  test("no limit, no breach", () => {
    expect(
      breaches([
        [1, { kind: "change", lashMm: 900 }],
        [2, { kind: "fish", weightG: 90_000 }],
      ]),
    ).toEqual([]);
    expect(breachesOf(emptySession, at(0), UNKNOWN_BIAS, 0.05)).toEqual([]);
    const cleared = { lashLimitMm: null, netLimitG: null, baitLimitsG: null, endsAt: null };
    expect(breaches([[1, { kind: "change", lashMm: 900 }]], { plan: cleared })).toEqual([]);
  });

  test("lash: more than the limit, not as much", () => {
    const plan = { lashLimitMm: 300 };
    expect(breaches([[1, { kind: "change", lashMm: 300 }]], { plan })).toEqual([]);
    expect(breaches([[1, { kind: "change", lashMm: 350 }]], { plan })).toEqual([
      { rule: "lash", lashMm: 350, limitMm: 300 },
    ]);
    expect(
      breaches(
        [
          [1, { kind: "change", lashMm: 350 }],
          [2, { kind: "change", lashMm: 200 }],
        ],
        { plan },
      ),
    ).toEqual([]);
  });

  test("nets: over, or one fish away in the net in use only", () => {
    const limitG = gramsOf(60);
    const heavy = { kind: "fish", weightG: gramsOf(1), count: 70 } as const;
    const light = { kind: "fish", weightG: gramsOf(4), count: 2 } as const;
    const plan = { netLimitG: limitG };
    expect(
      breaches(
        [
          [1, heavy],
          [2, { kind: "net" }],
          [3, light],
        ],
        { plan },
      ),
    ).toEqual([{ rule: "net", net: 1, standing: "over", chance: expect.closeTo(0.75, 1), limitG }]);
    const weighed = { plan: { netLimitG: gramsOf(9) }, weighed: { 1: gramsOf(9) } };
    expect(
      breaches(
        [
          [1, light],
          [2, { kind: "net" }],
        ],
        weighed,
      ),
    ).toEqual([]);
    const near = breaches([[1, light]], { plan: { netLimitG: gramsOf(12.5) } });
    expect(near).toMatchObject([{ rule: "net", net: 1, standing: "one-more" }]);
    expect(
      breaches(
        [
          [1, light],
          [2, { kind: "net" }],
        ],
        { plan: { netLimitG: gramsOf(12.5) } },
      ),
    ).toEqual([]);
  });

  test("bait: what was fed, times over, by name or by what is on the hook", () => {
    const plan = { baitLimitsG: { pellet: 2000 } };
    const lines = [
      [1, { kind: "feed", bait: "pellet", amountG: 500, times: 3 }],
      [2, { kind: "change", bait: "pellet" }],
      [3, { kind: "feed", amountG: 400 }],
      [4, { kind: "feed", times: 2 }],
      [5, { kind: "feed", bait: "corn", amountG: 5000 }],
    ] as const;
    expect(breaches(lines, { plan })).toEqual([]);
    expect(breaches([...lines, [6, { kind: "feed", amountG: 101 }]], { plan })).toEqual([
      { rule: "bait", bait: "pellet", usedG: 2001, limitG: 2000 },
    ]);
    const used = baitUsed(sessionOf(lines).entries);
    expect(used.get("pellet")).toEqual({ grams: 1900, unweighed: 2 });
    expect(baitUsed(sessionOf([[1, { kind: "feed", amountG: 9 }]]).entries).size).toBe(0);
  });

  test("nets: more in use than allowed; one named and left empty is in use", () => {
    const plan = { netsAllowed: 1 };
    expect(breaches([[1, { kind: "fish" }]], { plan })).toEqual([]);
    expect(breaches([[1, { kind: "net" }]], { plan: { netsAllowed: 2 } })).toEqual([]);
    const two = [
      [1, { kind: "fish" }],
      [2, { kind: "net" }],
    ] as const;
    expect(breaches(two, { plan })).toEqual([{ rule: "nets", used: 2, allowed: 1 }]);
  });

  test("bait that is not allowed: on the hook while it is there, fed for good", () => {
    const plan = { baitsBanned: ["bread", "hemp"] };
    const hooked = [1, { kind: "change", bait: "bread" }] as const;
    expect(breaches([hooked], { plan })).toEqual([{ rule: "bait-banned", bait: "bread" }]);
    expect(breaches([hooked, [2, { kind: "change", bait: "corn" }]], { plan })).toEqual([]);
    expect(
      breaches([hooked, [2, { kind: "feed" }], [3, { kind: "change", bait: "corn" }]], { plan }),
    ).toEqual([{ rule: "bait-banned", bait: "bread" }]);
  });

  test("time: fishing before the start", () => {
    const plan = { startsAt: at(10), endsAt: at(50) };
    expect(breaches([], { plan }, 9)).toEqual([{ rule: "early", startsAt: at(10) }]);
    expect(breaches([], { plan }, 10)).toEqual([]);
  });

  test("time: fishing on after the end, not once it is over", () => {
    const plan = { endsAt: at(50) };
    expect(breaches([], { plan })).toEqual([{ rule: "time", endedAt: at(50) }]);
    expect(breaches([], { plan }, 50)).toEqual([]);
    expect(breaches([], { plan, endsAfter: 49 })).toEqual([]);
  });
});
