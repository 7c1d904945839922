import { describe, expect, test } from "vitest";
import type { EntryStatement } from "../../src/log/event.ts";
import type { Entry } from "../../src/log/session.ts";
import { Bank, MINUTE_MS, NINE } from "./bank.ts";

const POUND_G = 453.59237;

const nth = (bank: Bank, index: number): Entry => {
  const entry = bank.session.entries[index];
  if (!entry) throw new Error(`no entry ${index}`);
  return entry;
};

async function withThreeFish(): Promise<Bank> {
  const bank = new Bank();
  await bank.say("F1 one pound", "F1 two pounds", "F1 three pounds");
  return bank;
}

test("amending, clearing and moving an entry", async () => {
  const bank = await withThreeFish();
  const correct = (index: number, change: object, at?: number) => {
    const entry = nth(bank, index);
    return bank.hand.correct(entry, { ...entry.statement, ...change } as EntryStatement, at);
  };
  await correct(0, { species: "tench" });
  await correct(1, { weightG: undefined });
  await correct(2, {}, NINE - MINUTE_MS);
  expect(bank.entries).toMatchObject([
    { species: "f1", weightG: 3 * POUND_G },
    { species: "tench", weightG: POUND_G },
    { species: "f1" },
  ]);
  expect(bank.session.unweighed).toBe(1);
  expect(nth(bank, 1).history.at(-1)?.heard?.by).toBe("touched");
});

test("settling takes an entry off the list to look at", async () => {
  const bank = new Bank();
  await bank.say("roach forty");
  expect(nth(bank, 0).verdict).toBe("check");
  await bank.hand.settle(nth(bank, 0));
  expect(nth(bank, 0).verdict).toBe("log");
});

describe("taking out and bringing back", () => {
  test("one entry", async () => {
    const bank = await withThreeFish();
    await bank.hand.withdraw(nth(bank, 1));
    expect(bank.session.count).toBe(2);
    const [gone] = bank.session.withdrawn;
    if (gone) await bank.hand.restore(gone);
    expect(bank.session.count).toBe(3);
    expect(bank.session.withdrawn).toEqual([]);
  });

  test("one of several that went together, and the others stay away", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds ten centimetres shallower feeding", "scratch that");
    const fish = bank.session.withdrawn.find(({ statement }) => statement.kind === "fish");
    if (fish) await bank.hand.restore(fish);
    expect(bank.entries.map(({ kind }) => kind)).toEqual(["fish"]);
    expect(bank.session.withdrawn).toHaveLength(2);
  });
});

test("a heard line becomes entries at its own time", async () => {
  const bank = new Bank();
  await bank.say("that was a lovely fish", "feeding");
  const [line] = bank.session.heardLines;
  await bank.hand.adopt(line?.id ?? "", [{ kind: "fish", weightG: 900 }, { kind: "drop" }]);
  expect(bank.session.entries.map(({ at, statement }) => [at - NINE, statement.kind])).toEqual([
    [0, "fish"],
    [0, "drop"],
    [MINUTE_MS, "feed"],
  ]);
});

test("an entry never said goes to the time it happened", async () => {
  const bank = await withThreeFish();
  await bank.hand.addEntry({ kind: "fish", weightG: 500 }, NINE + MINUTE_MS / 2);
  expect(bank.entries[1]).toEqual({ kind: "fish", weightG: 500 });
  expect(nth(bank, 1).heard?.by).toBe("touched");
});

test("what the scales said of a net is taken back, however often it was entered, and brought back", async () => {
  const bank = await withThreeFish();
  await bank.hand.weigh(1, 2900);
  await bank.hand.weigh(1, 3000);
  await bank.say("carp two pounds");
  const [net] = bank.session.nets;
  if (net) await bank.hand.unweigh(net);
  expect(bank.session.nets[0]).not.toHaveProperty("weighedG");
  await bank.hand.redo();
  expect(bank.session.nets[0]).toMatchObject({ weighedG: 3000 });
});

test("weighing a net, and setting the plan", async () => {
  const bank = await withThreeFish();
  await bank.hand.weigh(1, 2900);
  await bank.hand.setPlan({ peg: "17" });
  await bank.hand.setPlan({ water: "Osier Lake" });
  expect(bank.session.nets).toMatchObject([{ number: 1, weighedG: 2900 }]);
  expect(bank.session.plan).toEqual({ peg: "17", water: "Osier Lake" });
});

describe("undo and redo", () => {
  test("go back and forth step by step", async () => {
    const bank = await withThreeFish();
    await bank.hand.correct(nth(bank, 0), { kind: "fish", weightG: 5 * POUND_G });
    await bank.hand.withdraw(nth(bank, 2));
    const pounds = () => Math.round(bank.session.spokenG / POUND_G);
    expect(pounds()).toBe(7);
    await bank.hand.undo();
    expect(pounds()).toBe(10);
    await bank.hand.undo();
    expect(pounds()).toBe(6);
    await bank.hand.undo();
    expect(pounds()).toBe(6);
    await bank.hand.redo();
    expect(pounds()).toBe(10);
    await bank.hand.redo();
    expect(pounds()).toBe(7);
  });

  test("take an added entry as one step", async () => {
    const bank = await withThreeFish();
    await bank.hand.addEntry({ kind: "fish", weightG: 500 }, NINE);
    await bank.hand.undo();
    expect(bank.session.count).toBe(3);
    await bank.hand.redo();
    expect(bank.session.count).toBe(4);
  });

  test("take an adopted line as one step", async () => {
    const bank = new Bank();
    await bank.say("that was a lovely fish");
    const [line] = bank.session.heardLines;
    await bank.hand.adopt(line?.id ?? "", [{ kind: "fish" }, { kind: "drop" }]);
    await bank.hand.undo();
    expect(bank.entries).toEqual([]);
    expect(bank.session.heardLines).toHaveLength(1);
  });

  test("leave the fish when a correction said in the same breath is undone", async () => {
    const bank = new Bank();
    await bank.say("fish two pounds no make that three pounds");
    await bank.hand.undo();
    expect(bank.session.spokenG).toBeCloseTo(2 * POUND_G, 9);
  });
});
