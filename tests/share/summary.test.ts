import { describe, expect, test } from "vitest";
import { NOTHING_ALLOWED } from "../../src/share/allowed.ts";
import { summarise } from "../../src/share/summary.ts";
import { summaryText } from "../../src/share/summary-text.ts";
import { at, MINUTE, sessionOf } from "../analysis/fixtures/session.ts";

const POUND_G = 453.59237;

const day = sessionOf(
  [
    [0, { kind: "change", rig: "1", depthMm: 1800 }],
    [0.5, { kind: "change", bait: "pellet", hook: 16 }],
    [5, { kind: "drop" }],
    [8, { kind: "sign", sort: "bite" }],
    [10, { kind: "fish", species: "skimmer", weightG: 0.75 * POUND_G }],
    [20, { kind: "sign", sort: "missed" }],
    [25, { kind: "loss", cause: "pulled" }],
    [30, { kind: "change", rig: "2", depthMm: 600, bait: "maggot", hook: 18 }],
    [31, { kind: "fish", species: "f1", weightG: 1.5 * POUND_G, lengthMm: 350 }],
    [32, { kind: "fish", species: "f1", weightG: 2 * POUND_G }],
    [33, { kind: "loss", cause: "off" }],
    [34, { kind: "loss", cause: "pulled" }],
    [60, { kind: "fish", species: "roach", count: 3 }],
    [61, { kind: "sign", sort: "bite" }],
    [70, { kind: "net" }],
    [72, { kind: "fish", species: "carp", weightG: 6.5 * POUND_G, lengthMm: 550 }],
    [90, { kind: "change", rig: "1", depthMm: 1800, bait: "pellet", hook: 16 }],
    [95, { kind: "fish", weightG: 1 * POUND_G }],
  ],
  {
    plan: { water: "Osier Lake", peg: "17", method: "practice" },
    pauses: [[40, 50]],
    endsAfter: 120,
    weighed: { 2: 7 * POUND_G },
  },
);

describe("the summary", () => {
  const summary = summarise(day, at(500));

  test("adds up fish and weight, and says how many had none", () => {
    expect(summary).toMatchObject({ count: 8, unweighed: 3, fishedMs: 110 * MINUTE });
    expect(summary.spokenG / POUND_G).toBeCloseTo(11.75, 9);
  });

  test("counts by species, the most first", () => {
    expect(
      summary.species.map(({ species, count, spokenG, unweighed }) => [
        species,
        count,
        Math.round((100 * spokenG) / POUND_G) / 100,
        unweighed,
      ]),
    ).toEqual([
      ["roach", 3, 0, 3],
      ["f1", 2, 3.5, 0],
      ["carp", 1, 6.5, 0],
      [undefined, 1, 1, 0],
      ["skimmer", 1, 0.75, 0],
    ]);
  });

  test("holds losses by cause, signs and drops", () => {
    expect(summary.losses).toEqual([
      { value: "pulled", count: 2 },
      { value: "off", count: 1 },
    ]);
    expect(summary.signs).toEqual([
      { value: "bite", count: 2 },
      { value: "missed", count: 1 },
    ]);
    expect(summary.drops).toBe(1);
  });

  test("sets fish and time against each set-up, pauses out, wherever it was used", () => {
    expect(
      summary.setUps.map(({ setUp, count, fishedMs }) => [setUp.rig, count, fishedMs / MINUTE]),
    ).toEqual([
      ["1", 0, 0.5],
      ["1", 2, 59.5],
      ["2", 6, 50],
    ]);
    const sum = summary.setUps.reduce((total, { fishedMs }) => total + fishedMs, 0);
    expect(sum).toBe(summary.fishedMs);
  });

  test("names the heaviest fish", () => {
    expect(summary.best).toMatchObject({ species: "carp", lengthMm: 550 });
  });

  test("of a session that still lasts goes up to now", () => {
    const { endedAt: _, ...rest } = day;
    expect(summarise({ ...rest, state: "fishing" }, at(130)).fishedMs).toBe(120 * MINUTE);
  });
});

describe("the text for a message", () => {
  const styles = { weight: "lb-oz", length: "cm" } as const;
  const text = (withPlace: boolean) =>
    summaryText(summarise(day, at(500)), styles, {
      ...NOTHING_ALLOWED,
      water: withPlace,
      peg: withPlace,
    });

  test("is plain and whole", () => {
    expect(text(true)).toBe(`Osier Lake, peg 17
Saturday 6 June 2026, practice, 1 h 50 min fished
11 lb 12 oz from 8 fish, 3 of them without a weight (as spoken)
Fish: 3 roach, 2 F1 (3 lb 8 oz), 1 carp (6 lb 8 oz), 1 not named (1 lb), 1 skimmer (12 oz)
Best: carp, 6 lb 8 oz, 55 cm
Lost: 2 hook pulled, 1 came off
Signs: 2 bites, 1 missed bite

Set-ups:
- rig 1, 1.8 m deep, hook 16, pellet: 1 lb 12 oz from 2 fish in 59 min
- rig 2, 60 cm deep, hook 18, maggot: 10 lb from 6 fish, 3 of them without a weight in 50 min

Nets:
- 1: 4 lb 4 oz from 6 fish, 3 of them without a weight
- 2: 7 lb 8 oz from 2 fish; scales 7 lb`);
  });

  test("names water and peg only where it may", () => {
    expect(text(false)).not.toMatch(/Osier|17/);
    expect(text(false).split("\n")[0]).toBe("Saturday 6 June 2026, practice, 1 h 50 min fished");
  });

  test("has the scales' total once every net was weighed", () => {
    const weighed = { ...day, nets: day.nets.map((net) => ({ ...net, weighedG: 6 * POUND_G })) };
    expect(summaryText(summarise(weighed, at(500)), styles)).toContain("Scales: 12 lb\n");
    expect(text(false)).not.toContain("Scales:");
  });

  test("comes in kilos and inches where these are set", () => {
    const metric = summaryText(summarise(day, at(500)), { weight: "kg", length: "in" });
    expect(metric).toContain("5.33 kg from 8 fish");
    expect(metric).toContain("Best: carp, 2.95 kg, 21¾ in");
  });

  test("says what still wants a look", () => {
    const [entry, ...entries] = day.entries;
    const session = entry
      ? { ...day, entries: [{ ...entry, verdict: "check" as const }, ...entries] }
      : day;
    expect(summaryText(summarise(session, at(500)), styles)).toMatch(
      /1 entry still to be checked\.$/,
    );
  });
});
