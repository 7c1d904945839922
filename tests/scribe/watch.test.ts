import { describe, expect, test } from "vitest";
import type { PastSession } from "../../src/analysis/seasons/past.ts";
import { ALL_WARNINGS, type Warnings } from "../../src/scribe/warnings.ts";
import { Bank, MINUTE_MS, NINE } from "./bank.ts";

const POUND_G = 453.59237;

describe("a net's limit", () => {
  test("is warned of when it is near, and again when it is reached, once each", async () => {
    const bank = new Bank();
    await bank.plan({ netLimitG: 60 * POUND_G });
    await bank.say(...Array<string>(24).fill("F1 two pounds"));
    expect(bank.reminded).toEqual([]);
    await bank.say("F1 two pounds", "F1 two pounds", "F1 two pounds");
    expect(bank.reminded).toHaveLength(1);
    expect(bank.reminded[0]).toMatch(
      /^One more fish may put net 1 over its limit: 5[024] pounds of 60 pounds\.$/,
    );
    expect(bank.told.filter(({ outcome }) => outcome === "warning")).toHaveLength(1);
    await bank.say("feeding", "F1 two pounds", "F1 two pounds");
    expect(bank.reminded).toHaveLength(1);
    await bank.say("F1 two pounds");
    expect(bank.reminded.at(-1)).toBe(
      "Net 1 is at its limit: 60 pounds of 60 pounds. Change nets.",
    );
    await bank.say("new net", "F1 two pounds");
    expect(bank.reminded).toHaveLength(2);
  });

  test("is warned of before one more fish like the others would pass it", async () => {
    const bank = new Bank();
    await bank.plan({ netLimitG: 10 * POUND_G });
    await bank.say("carp five pounds");
    expect(bank.reminded).toEqual([
      "One more fish may put net 1 over its limit: 5 pounds of 10 pounds.",
    ]);
  });

  test("is warned of though it is the first thing said, before anybody has looked", async () => {
    const bank = new Bank();
    await bank.plan({ netLimitG: 10 * POUND_G });
    bank.scribe = bank.newScribe();
    await bank.say("carp nine pounds eight");
    expect(bank.told.at(-1)).toMatchObject({ outcome: "warning" });
    expect(bank.reminded).toEqual([
      "Net 1 may be over its limit: 9 pounds 8 ounces of 10 pounds by your word.",
    ]);
  });

  test("is warned of once more after a correction took it back", async () => {
    const bank = new Bank();
    await bank.plan({ netLimitG: 10 * POUND_G });
    await bank.say("fish nine and a half pounds", "make that three pounds", "fish seven pounds");
    expect(bank.reminded).toEqual([
      "Net 1 may be over its limit: 9 pounds 8 ounces of 10 pounds by your word.",
      "Net 1 is at its limit: 10 pounds of 10 pounds. Change nets.",
    ]);
  });

  test("is near earlier where the scales have shown the angler to speak too low", async () => {
    const warnedAt = async (scalesLb: number) => {
      const bank = new Bank();
      await bank.plan({ netLimitG: 60 * POUND_G });
      for (let net = 1; net <= 5; net += 1) {
        await bank.say("carp twenty pounds");
        await bank.hand.weigh(net, scalesLb * POUND_G);
        await bank.say("new net");
      }
      for (let pounds = 2; ; pounds += 2) {
        await bank.say("F1 two pounds");
        if (bank.reminded.length > 0) return pounds;
      }
    };
    expect(await warnedAt(26)).toBeLessThan(await warnedAt(20));
  });
});

test("too much line above the float is warned of as soon as it is said", async () => {
  const bank = new Bank();
  await bank.plan({ lashLimitMm: 300 });
  await bank.say("lash twenty five centimetres");
  expect(bank.reminded).toEqual([]);
  await bank.say("lash forty centimetres");
  expect(bank.reminded).toEqual([
    "Too much line above the float: 40 centimetres, and 30 centimetres is allowed.",
  ]);
});

test("bait is added up, times and all, and the limit is warned of when it is reached", async () => {
  const bank = new Bank();
  await bank.plan({ baitLimitsG: { pellet: 200 } });
  await bank.say("potted in fifty grams of pellet", "potted in fifty grams of corn");
  await bank.say("potted in a hundred grams of pellet");
  expect(bank.reminded).toEqual([]);
  await bank.say("potted in fifty grams of pellet");
  expect(bank.reminded).toEqual(["The limit of 7 ounces of pellet is used up."]);
});

test("the end is warned of ten minutes before, and when it has come", async () => {
  const bank = new Bank();
  await bank.plan({ endsAt: NINE + 60 * MINUTE_MS });
  bank.wait(55);
  expect(bank.reminded).toEqual([]);
  await bank.say("all out", "start the session");
  expect(bank.reminded).toEqual(["Ten minutes left."]);
  bank.wait(5);
  expect(bank.reminded).toEqual(["Ten minutes left.", "Time is up."]);
  bank.wait(5);
  expect(bank.reminded).toHaveLength(2);
});

describe("a reminder", () => {
  test("comes every so often, in its own words, until it is stopped", async () => {
    const bank = new Bank();
    await bank.say("start the session", "remind me to feed every two minutes");
    bank.wait(0);
    expect(bank.reminded).toEqual([]);
    for (let minute = 0; minute < 5; minute += 1) bank.wait(1);
    expect(bank.reminded).toEqual(["feed", "feed", "feed"]);
    expect(bank.answer).toEqual({ asked: true, short: "feed", full: "feed" });
    await bank.say("stop nudging");
    bank.wait(10);
    expect(bank.reminded).toHaveLength(3);
  });

  test("keeps quiet in a break and does not catch up afterwards", async () => {
    const bank = new Bank();
    await bank.say("start the session", "nudge me every two minutes", "taking a break");
    for (let minute = 0; minute < 9; minute += 1) bank.wait(1);
    expect(bank.reminded).toEqual([]);
    await bank.say("back on");
    expect(bank.reminded).toEqual([]);
    bank.wait(0);
    expect(bank.reminded).toEqual(["Nudge"]);
  });
});

describe("what earlier sessions taught", () => {
  /** Five days of one weighed net each, on which he spoke so many times too low. */
  const past = (low: number): PastSession[] =>
    ["a", "b", "c", "d", "e"].map((id) => ({
      id,
      startedAt: NINE,
      nets: [{ session: id, spokenG: 20 * POUND_G, weighedG: 20 * low * POUND_G }],
      trials: { rig: [], depth: [], distance: [], bait: [], hook: [], hour: [] },
    }));
  const warnedAt = async (earlier: PastSession[]) => {
    const bank = new Bank();
    bank.past = earlier;
    await bank.plan({ netLimitG: 60 * POUND_G });
    for (let pounds = 2; ; pounds += 2) {
      await bank.say("F1 two pounds");
      if (bank.reminded.length > 0) return pounds;
    }
  };

  test("brings the warning of a net nearer to where it belongs", async () => {
    const [low, right, unknown] = [
      await warnedAt(past(1.3)),
      await warnedAt(past(1)),
      await warnedAt([]),
    ];
    expect(low).toBeLessThan(unknown);
    expect(right).toBeGreaterThan(unknown);
  });
});

describe("warnings that were switched off", () => {
  const silent = async (off: Partial<Warnings>, ...lines: string[]) => {
    const bank = new Bank();
    bank.settings = { ...bank.settings, warnings: { ...ALL_WARNINGS, ...off } };
    await bank.plan({
      netLimitG: 10 * POUND_G,
      lashLimitMm: 300,
      baitLimitsG: { corn: 50 },
      baitsBanned: ["bread"],
      netsAllowed: 1,
      endsAt: NINE + 60 * MINUTE_MS,
    });
    await bank.say(...lines);
    bank.wait(60);
    return bank.reminded;
  };

  test("a net that is near says nothing, one that is full breaks a rule", async () => {
    expect(await silent({ nets: "off" }, "carp nine pounds")).toEqual(["Time is up."]);
    expect(await silent({ nets: "off" }, "carp nine pounds", "carp one pound")).toEqual([
      "Net 1 is at its limit: 10 pounds of 10 pounds. Change nets.",
      "Time is up.",
    ]);
  });

  test("rules", async () => {
    const lines = [
      "lash forty centimetres",
      "potted in a hundred grams of corn",
      "on bread",
      "F1 one pound",
      "new net",
    ];
    expect(await silent({ rules: false, pace: false }, ...lines)).toEqual([]);
    expect(await silent({ pace: false }, ...lines)).toEqual([
      "Too much line above the float: 40 centimetres, and 30 centimetres is allowed.",
      "The limit of 2 ounces of corn is used up.",
      "Bread is not allowed here.",
      "2 nets in use, and 1 allowed.",
      "Time is up.",
    ]);
  });

  test("a later warning of nets comes later", async () => {
    const lines = Array<string>(9).fill("fish one pound");
    const first = async (nets: Warnings["nets"]) => (await silent({ nets }, ...lines))[0] ?? "";
    expect(await first("early")).toMatch(/: 7 pounds of/);
    expect(await first("usual")).toMatch(/: 8 pounds of/);
    expect(await first("late")).toMatch(/: 9 pounds of/);
  });
});

test("fishing before the start is warned of", async () => {
  const bank = new Bank();
  await bank.plan({ startsAt: NINE + 20 * MINUTE_MS });
  bank.wait(0);
  await bank.say("start the session");
  expect(bank.reminded).toEqual(["Too early: the start is in 20 minutes."]);
  bank.wait(30);
  expect(bank.reminded).toHaveLength(1);
});

describe("a rig with more shot than its float carries", () => {
  const float = { label: "4x12", lower: 0.15, upper: 0.2 };
  const warned = async (shots: { size: string; count: number }[]) => {
    const bank = new Bank();
    await bank.plan({ rigs: [{ name: "2", float, shots }] });
    await bank.say("rig two", "rig one", "rig two");
    return bank.reminded;
  };

  test("is told of each time it is picked up", async () => {
    const sinks = "Rig 2 sinks: it has more shot than its float carries.";
    expect(await warned([{ size: "6", count: 4 }])).toEqual([sinks, sinks]);
  });

  test("is known by the name it was made up under", async () => {
    const bank = new Bank();
    await bank.plan({
      rigs: [{ name: "dobber", depthMm: 600, float, shots: [{ size: "6", count: 4 }] }],
    });
    await bank.say("on the dobber rig");
    expect(bank.session.setUp).toMatchObject({ rig: "dobber", depthMm: 600 });
    expect(bank.reminded).toEqual([
      "The dobber rig sinks: it has more shot than its float carries.",
    ]);
  });

  test("is not, where the makers' spread could go either way", async () => {
    expect(await warned([{ size: "8", count: 3 }])).toEqual([]);
  });
});

describe("the pace", () => {
  const fishEvery = async (bank: Bank, minutes: number, times: number) => {
    for (let fish = 0; fish < times; fish += 1) {
      await bank.say("F1 one pound");
      bank.now += (minutes - 1) * MINUTE_MS;
      bank.scribe.look();
    }
  };

  test("that has gone quiet is told of once, and again after fish have come in between", async () => {
    const bank = new Bank();
    await bank.say("start the session");
    await fishEvery(bank, 3, 15);
    expect(bank.reminded).toEqual([]);
    for (let minute = 0; minute < 60; minute += 1) bank.wait(1);
    expect(bank.reminded).toEqual([
      expect.stringMatching(
        /^Gone quiet: [23]\d minutes without a fish, and they came every 3 minutes\.$/,
      ),
    ]);
    await fishEvery(bank, 3, 40);
    for (let minute = 0; minute < 120; minute += 1) bank.wait(1);
    expect(bank.reminded.filter((words) => words.startsWith("Gone quiet"))).toHaveLength(2);
  });

  test("that goes to and fro about the limit is told of once", async () => {
    const bank = new Bank();
    await bank.say("start the session");
    await fishEvery(bank, 3, 15);
    while (bank.reminded.length === 0) bank.wait(1);
    await bank.say("F1 one pound", "F1 one pound");
    for (let minute = 0; minute < 9; minute += 1) bank.wait(1);
    expect(bank.reminded).toHaveLength(1);
  });

  test("is not told of in a break, nor while it is switched off", async () => {
    const bank = new Bank();
    await bank.say("start the session");
    await fishEvery(bank, 3, 15);
    await bank.say("taking a break");
    for (let minute = 0; minute < 90; minute += 1) bank.wait(1);
    expect(bank.reminded).toEqual([]);
    await bank.say("back on");
    bank.settings = { ...bank.settings, warnings: { ...ALL_WARNINGS, pace: false } };
    for (let minute = 0; minute < 90; minute += 1) bank.wait(1);
    expect(bank.reminded).toEqual([]);
  });

  test("that has come on is told of once", async () => {
    const bank = new Bank();
    await bank.say("start the session");
    await fishEvery(bank, 10, 10);
    await fishEvery(bank, 1, 20);
    expect(bank.reminded).toEqual(["It has come on: they come faster than before."]);
  });
});

test("a reminder to feed counts from the last feed", async () => {
  const bank = new Bank();
  await bank.say("start the session", "remind me to feed every four minutes", "F1 one pound");
  bank.wait(1);
  await bank.say("feeding", "F1 one pound", "F1 one pound");
  bank.wait(0);
  expect(bank.reminded).toEqual([]);
  bank.wait(1);
  expect(bank.reminded).toEqual(["feed"]);
});
