import { expect, test } from "vitest";
import { Bank, MINUTE_MS } from "./bank.ts";

async function bankAfter(...lines: string[]): Promise<Bank> {
  const bank = new Bank();
  await bank.say("start the session", ...lines);
  return bank;
}

test("what was lost, and how when all is wanted", async () => {
  const none = await bankAfter("F1 two pounds");
  expect(await none.ask("how many have I lost")).toBe("None lost.");
  const bank = await bankAfter("lost one", "hook pulled", "lost one", "snapped me");
  expect(await bank.ask("how many have I lost")).toBe("4 fish lost.");
  expect(bank.answer?.full).toBe("4 fish lost: 2 came off, 1 on a pulled hook and 1 snapped.");
});

test("the biggest fish, and how many were never weighed", async () => {
  const none = await bankAfter();
  expect(await none.ask("what's my biggest fish")).toBe("No fish yet.");
  const unsized = await bankAfter("three small roach");
  expect(await unsized.ask("what's my biggest fish")).toBe("No fish has a weight or a length yet.");
  const bank = await bankAfter("F1 two pounds", "carp six pounds four, sixty centimetres", "roach");
  expect(await bank.ask("what's my biggest fish")).toBe("Carp, 6 pounds 4 ounces, 60 centimetres.");
  expect(bank.answer?.full).toBe("Carp, 6 pounds 4 ounces, 60 centimetres. 1 without a weight.");
});

test("bites by their sort", async () => {
  const none = await bankAfter("F1 two pounds");
  expect(await none.ask("how many bites have I had")).toBe(
    "No bites or knocks are in the log yet.",
  );
  const bank = await bankAfter("bite", "missed one", "bite", "liner");
  expect(await bank.ask("how many bites have I had")).toBe(
    "In the log: 2 bites, 1 missed and 1 liner.",
  );
});

test("the answer before once more, as things stand now", async () => {
  const bank = await bankAfter("F1 two pounds");
  expect(await bank.ask("repeat that")).toBe("2 pounds from 1 fish.");
  await bank.ask("how many have I lost");
  await bank.ask("how sure is that");
  await bank.say("lost one");
  expect(await bank.ask("repeat that")).toBe("1 fish lost.");
});

test("the last fish is named with its time", async () => {
  const bank = await bankAfter("three small roach");
  expect(await bank.ask("what was my last fish")).toBe("1 minute since the last fish: 3 roach.");
});

test("what was fed, and when last", async () => {
  const none = await bankAfter("F1 two pounds");
  expect(await none.ask("when did I last feed")).toBe("No feed is in the log yet.");
  const bank = await bankAfter(
    "potted in fifty grams of pellet",
    "potted in fifty grams of pellet",
    "fed maggot",
  );
  bank.now += 4 * MINUTE_MS;
  expect(await bank.ask("when did I last feed")).toBe("5 minutes since the last feed.");
  expect(bank.answer?.full).toBe(
    "5 minutes since the last feed. Fed so far: 0.1 kilos of pellet and 1 time maggot.",
  );
});

test("how many of a kind is a question, and no fish", async () => {
  const bank = await bankAfter("F1 two pounds", "carp three pounds");
  expect(await bank.ask("how many carp")).toBe("2 fish.");
  expect(bank.answer?.full).toBe("2 fish: 1 carp and 1 F1.");
});
