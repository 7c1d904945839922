import { describe, expect, test } from "vitest";
import { Bank } from "./bank.ts";

const OUNCE_G = 28.349523125;

const catches = (bank: Bank) =>
  bank.session.entries.flatMap(({ statement, fishNumber }) =>
    statement.kind === "fish"
      ? [[fishNumber, statement.species, statement.count, statement.weightG]]
      : [],
  );

async function withThreeRoach(): Promise<Bank> {
  const bank = new Bank();
  await bank.say("carp one pound", "three small roach", "F1 one pound");
  return bank;
}

describe("a number is one fish", () => {
  test("said of one in an entry of three, the other two stay as they were", async () => {
    const bank = await withThreeRoach();
    await bank.say("fish three was ten ounces");
    expect(catches(bank)).toEqual([
      [1, "carp", undefined, 16 * OUNCE_G],
      [2, "roach", undefined, undefined],
      [3, "roach", undefined, 10 * OUNCE_G],
      [4, "roach", undefined, undefined],
      [5, "f1", undefined, 16 * OUNCE_G],
    ]);
  });

  test("said of two of them in one breath", async () => {
    const bank = await withThreeRoach();
    await bank.say("fish two was ten ounces, fish four was a tench");
    expect(catches(bank).slice(1, 4)).toEqual([
      [2, "roach", undefined, 10 * OUNCE_G],
      [3, "roach", undefined, undefined],
      [4, "tench", undefined, undefined],
    ]);
  });

  test("and scratched again, they are one entry of three", async () => {
    const bank = await withThreeRoach();
    const before = catches(bank);
    await bank.say("fish three was ten ounces", "scratch that");
    expect(catches(bank)).toEqual(before);
    expect(bank.answer?.short).toBe("Back to 3 roach.");
  });

  test("undone by touch and done again", async () => {
    const bank = await withThreeRoach();
    const before = catches(bank);
    await bank.say("fish four was ten ounces");
    const after = catches(bank);
    expect(after).toHaveLength(4);
    await bank.hand.undo();
    expect(catches(bank)).toEqual(before);
    await bank.hand.redo();
    expect(catches(bank)).toEqual(after);
  });

  test("taken out, the others stay", async () => {
    const bank = await withThreeRoach();
    await bank.say("take out fish three", "take out fish three");
    expect(catches(bank)).toEqual([
      [1, "carp", undefined, 16 * OUNCE_G],
      [2, "roach", undefined, undefined],
      [3, "f1", undefined, 16 * OUNCE_G],
    ]);
    await bank.say("take out fish two");
    expect(catches(bank)).toHaveLength(2);
  });

  test("what is said back tells of both parts", async () => {
    const bank = await withThreeRoach();
    await bank.say("fish four was ten ounces");
    expect(bank.answer?.short).toBe("Now 2 roach. Now roach, 10 ounces.");
  });
});

describe("with an entry on the screen", () => {
  async function asking(...lines: string[]): Promise<Bank> {
    const bank = new Bank();
    await bank.say(...lines);
    bank.inQuestion = bank.session.entries[0]?.id;
    return bank;
  }

  test("“that” is this entry, and a doubt about it is settled", async () => {
    const bank = await asking("roach thirty", "carp two pounds");
    expect(bank.session.entries[0]?.verdict).toBe("check");
    await bank.say("make that ten ounces");
    expect(bank.session.entries[0]).toMatchObject({
      verdict: "log",
      statement: { weightG: 10 * OUNCE_G },
    });
    expect(bank.session.entries[1]?.statement).toMatchObject({ weightG: 32 * OUNCE_G });
  });

  test("“scratch that” takes back what was last said of it, then itself", async () => {
    const bank = await asking("tench two pounds", "carp two pounds");
    await bank.say("make that ten ounces", "scratch that");
    expect(catches(bank)[0]).toEqual([1, "tench", undefined, 32 * OUNCE_G]);
    await bank.say("scratch that");
    expect(catches(bank)).toEqual([[1, "carp", undefined, 32 * OUNCE_G]]);
  });

  test("what does not fit it is said to be about nothing, and goes to no other", async () => {
    const bank = await asking("feeding", "carp two pounds");
    await bank.say("make that three pounds");
    expect(bank.answer?.outcome).toBe("not-understood");
    expect(catches(bank)).toEqual([[1, "carp", undefined, 32 * OUNCE_G]]);
  });

  test("a yes settles its doubt, and is otherwise no answer", async () => {
    const bank = await asking("roach thirty");
    await bank.say("yes that's right");
    expect(bank.session.entries[0]?.verdict).toBe("log");
    expect(bank.session.heardLines).toEqual([]);
    await bank.say("yes");
    expect(bank.session.heardLines).toHaveLength(1);
  });

  test("a number means that fish all the same, and news is news", async () => {
    const bank = await asking("tench two pounds", "carp two pounds");
    await bank.say("fish two was a bream", "F1 one pound");
    expect(catches(bank).map(([, species]) => species)).toEqual(["tench", "bream", "f1"]);
  });
});
