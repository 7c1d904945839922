import { describe, expect, test } from "vitest";
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
