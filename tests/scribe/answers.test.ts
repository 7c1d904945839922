import { describe, expect, test } from "vitest";
import { Bank, MINUTE_MS, NINE } from "./bank.ts";

const POUND_G = 453.59237;

async function bankAfter(...lines: string[]): Promise<Bank> {
  const bank = new Bank();
  // Answers are tried here, and nothing is to be said between them.
  bank.settings = { ...bank.settings, warnings: { ...bank.settings.warnings, pace: false } };
  await bank.say("start the session", ...lines);
  return bank;
}

/** So many fish in a row, a minute each. */
const fish = (number: number, what = "F1 two pounds") => Array<string>(number).fill(what);

describe("what have I got", () => {
  test.each([
    [[], "Nothing yet."],
    [["F1 two pounds eight", "carp three pounds twelve"], "6 pounds 4 ounces from 2 fish."],
    [["fish ten ounces"], "10 ounces from 1 fish."],
    [["F1 two pounds", "three small roach"], "2 pounds, and 3 of 4 fish without a weight."],
    [["three small roach"], "3 fish, none with a weight."],
  ])("after %j: %s", async (lines, expected) => {
    expect(await (await bankAfter(...lines)).ask("what have I got")).toBe(expected);
  });

  test("comes in kilos where kilos are set, whatever was spoken", async () => {
    const bank = await bankAfter("F1 two pounds");
    bank.settings = { ...bank.settings, weight: "kg" };
    expect(await bank.ask("what have I got")).toBe("0.91 kilos from 1 fish.");
  });
});

test("how many: in all, and by kind when all is wanted", async () => {
  const bank = await bankAfter(
    "F1 two pounds",
    "carp three pounds",
    "F1 one pound",
    "fish one pound",
  );
  expect(await bank.ask("how many fish have I got")).toBe("4 fish.");
  expect(bank.answer?.full).toBe("4 fish: 2 F1, 1 carp and 1 not named.");
});

describe("how long since the last one", () => {
  test("counts from the fish, not from what came after it", async () => {
    const bank = await bankAfter("F1 two pounds", "feeding");
    bank.now += 2 * MINUTE_MS;
    expect(await bank.ask("how long since the last one")).toBe(
      "4 minutes since the last fish: F1, 2 pounds.",
    );
    bank.now += 61 * MINUTE_MS;
    expect(await bank.ask("how long since the last one")).toBe(
      "1 hour 5 minutes since the last fish: F1, 2 pounds.",
    );
  });

  test("says how long it has been without any", async () => {
    const bank = await bankAfter("feeding");
    expect(await bank.ask("how long since the last one")).toBe("No fish yet, after 2 minutes.");
  });
});

describe("how's the net", () => {
  test("its number, what is in it, and the room to the limit", async () => {
    const bank = await bankAfter("F1 two pounds", "new net", "carp ten pounds", "two small roach");
    expect(await bank.ask("how's the net")).toBe(
      "Net 2: 10 pounds from 3 fish. 2 of 3 fish without a weight.",
    );
    await bank.plan({ netLimitG: 12 * POUND_G });
    expect(await bank.ask("how's the net")).toBe(
      "Net 2: 10 pounds, room for 2 pounds. 2 of 3 fish without a weight.",
    );
    await bank.say("carp four pounds");
    expect(await bank.ask("how's the net")).toMatch(/^Net 2: 14 pounds, 2 pounds over the limit\./);
  });
});

test("how long left: by the plan's end, or that none is set", async () => {
  const bank = await bankAfter();
  expect(await bank.ask("how long left")).toBe("No end time is set.");
  await bank.plan({ endsAt: NINE + 80 * MINUTE_MS });
  bank.now = NINE + 5 * MINUTE_MS;
  expect(await bank.ask("how long left")).toBe("1 hour 15 minutes left.");
  bank.now = NINE + 87 * MINUTE_MS;
  expect(await bank.ask("how long left")).toBe("Time was up 7 minutes ago.");
});

test("what's my set-up: every part that is in force, in the angler's units", async () => {
  const bank = await bankAfter();
  expect(await bank.ask("what's my set-up")).toBe("No set-up has been named.");
  await bank.say("rig two, depth half a metre, out to eleven metres, size sixteen hook");
  await bank.say("on red maggot", "lash twenty centimetres", "ten centimetres shallower");
  expect(await bank.ask("what's my set-up")).toBe(
    "Rig 2, depth 40 centimetres, out to 11 metres, size 16 hook, on the red maggot, 20 centimetres of line above the float.",
  );
  bank.settings = { ...bank.settings, length: "in" };
  expect(await bank.ask("what's my set-up")).toContain("depth 15.75 inches");
});

describe("what's my rate", () => {
  test("is not told of a few fish", async () => {
    const bank = await bankAfter(...fish(3));
    bank.now = NINE + 40 * MINUTE_MS;
    expect(await bank.ask("what's my rate")).toBe("3 fish in 40 minutes: too few for a rate.");
  });

  test("over the session and the last half hour, with breaks left out", async () => {
    const bank = await bankAfter(...fish(10));
    await bank.say("taking a break");
    bank.now += 60 * MINUTE_MS;
    await bank.say("back on");
    bank.now = NINE + (61 + 65) * MINUTE_MS;
    await bank.say(...fish(2));
    bank.now = NINE + (61 + 90) * MINUTE_MS;
    // Ninety minutes fished: twelve fish are eight an hour.
    expect(await bank.ask("what's my rate")).toBe(
      "4 fish an hour in the last half hour, 8 over the session.",
    );
  });

  test("says so when the fish have come on", async () => {
    const bank = await bankAfter(...fish(1));
    bank.now = NINE + 90 * MINUTE_MS;
    await bank.say(...fish(12));
    expect(await bank.ask("what's my rate")).toMatch(
      /^24 fish an hour in the last half hour, .* over the session\. Faster than before\.$/,
    );
  });
});

describe("which is best", () => {
  test("two fish are too few, and what there is gets told", async () => {
    const bank = await bankAfter("rig two", "F1 two pounds", "F1 two pounds");
    bank.now = NINE + 41 * MINUTE_MS;
    await bank.say("rig one");
    bank.now = NINE + 61 * MINUTE_MS;
    expect(await bank.ask("which rig is best")).toBe(
      "Too few to tell: 2 fish on rig 2 in 40 minutes and 0 fish on rig 1 in 20 minutes.",
    );
  });

  test("nothing tried by name leaves nothing to rank", async () => {
    const bank = await bankAfter(...fish(6));
    expect(await bank.ask("which bait is best")).toBe(
      "Too few to tell: no bait has been fished by name.",
    );
  });

  test("a clear one is named with what it rests on", async () => {
    const bank = await bankAfter("depth half a metre", ...fish(20));
    await bank.say("depth one metre");
    bank.now += 60 * MINUTE_MS;
    // Garwood's limits for 20 fish are 12.2 and 30.9, here in 21 minutes.
    expect(await bank.ask("which depth is best")).toBe(
      "50 centimetres: 57 an hour, 35 to 88. 99 in 100 that it beats 1 metre.",
    );
    expect(bank.answer?.full).toMatch(
      / 20 fish at 50 centimetres in 21 minutes and 0 fish at 1 metre in 1 hour 1 minute\.$/,
    );
  });

  test("one alone is not called best", async () => {
    const bank = await bankAfter("on corn", ...fish(6));
    expect(await bank.ask("which bait is best")).toMatch(/^Only corn so far: 6 fish on corn in /);
  });

  test("two alike are not told apart", async () => {
    const bank = await bankAfter("on corn", ...fish(6), "on pellet", ...fish(6));
    expect(await bank.ask("which bait is best")).toBe(
      "No clear best. Corn: 51 an hour, 19 to 112. Pellet: 51, 19 to 112.",
    );
  });
});

describe("what's my pace", () => {
  test("needs an end", async () => {
    const bank = await bankAfter(...fish(6));
    expect(await bank.ask("what's my pace")).toBe(
      "No end time is set, so no pace. 12 pounds from 6 fish.",
    );
  });

  test("is over with the session", async () => {
    const bank = await bankAfter(...fish(6));
    await bank.plan({ endsAt: NINE + 120 * MINUTE_MS });
    await bank.say("all out");
    expect(await bank.ask("what's my pace")).toBe("The session has ended. 12 pounds from 6 fish.");
  });

  test("needs some fish", async () => {
    const bank = await bankAfter(...fish(2));
    await bank.plan({ endsAt: NINE + 120 * MINUTE_MS });
    expect(await bank.ask("what's my pace")).toBe("Too few fish with a weight to tell.");
  });

  test("tells where the bag is heading, and what the target still needs", async () => {
    const bank = await bankAfter(...fish(10));
    bank.now = NINE + 60 * MINUTE_MS;
    await bank.plan({ endsAt: NINE + 120 * MINUTE_MS, targetG: 40 * POUND_G });
    // Twenty pounds in an hour, spoken weights taken to be right on the whole.
    expect(await bank.ask("what's my pace")).toMatch(
      /^Heading for (39|40) pounds.*\. The target needs (19|20) pounds( \d+ ounces)? an hour, about (9\.\d|10) fish\. 5 in 10 that it is reached\.$/,
    );
    expect(bank.answer?.full).toMatch(/likely between \d+ pounds.* and \d+ pounds/);
  });
});
