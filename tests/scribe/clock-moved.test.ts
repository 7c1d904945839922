/** The phone's clock is moved in the middle of a session: nothing is lost, doubled or left unsaid. */
import { describe, expect, test } from "vitest";
import { Bank, MINUTE_MS } from "./bank.ts";

const POUND_G = 453.59237;
const DAY_MINUTES = 24 * 60;
const FISH = Array.from({ length: 6 }, () => "carp two pounds");

async function fishing() {
  const bank = new Bank();
  await bank.say(
    "start the session",
    "nudge me every three minutes",
    "depth half a metre",
    ...FISH,
  );
  return bank;
}

describe("the clock set back an hour", () => {
  test("keeps the order, goes on counting, and answers as far as is written", async () => {
    const bank = await fishing();
    const before = bank.session.lastFishAt ?? 0;
    bank.now -= 60 * MINUTE_MS;
    expect(await bank.ask("how long since the last one")).toMatch(/^Less than a minute/i);
    expect(await bank.ask("what's the rate")).toMatch(/an hour|few/);
    await bank.say("carp three pounds", "make that four pounds");
    expect(bank.session.count).toBe(7);
    expect(bank.session.lastFishAt).toBeGreaterThanOrEqual(before);
    expect(bank.entries.at(-1)).toMatchObject({ kind: "fish", weightG: 4 * POUND_G });
    bank.wait(61);
    expect(await bank.ask("how long since the last one")).toMatch(/minute/);
  });

  test("does not hold reminders back for an hour", async () => {
    const bank = await fishing();
    bank.now -= 60 * MINUTE_MS;
    bank.wait(0);
    const { length } = bank.reminded;
    for (let minute = 0; minute < 12; minute += 1) bank.wait(1);
    expect(bank.reminded.length - length).toBe(4);
  });
});

describe("the clock set forward a day", () => {
  test("reminds once, not for every time that was jumped over", async () => {
    const bank = await fishing();
    const nudges = () => bank.reminded.filter((words) => words === "Nudge").length;
    const before = nudges();
    bank.now += DAY_MINUTES * MINUTE_MS;
    bank.wait(0);
    expect(nudges() - before).toBe(1);
    await bank.say("carp three pounds");
    expect(bank.session.count).toBe(7);
  });
});
