import { expect, test } from "vitest";
import type { Entry } from "../../src/log/session.ts";
import { Bank, MINUTE_MS } from "./bank.ts";

const nth = (bank: Bank, index: number): Entry => {
  const entry = bank.session.entries[index];
  if (!entry) throw new Error(`no entry ${index}`);
  return entry;
};

const steps = (bank: Bank) => [
  bank.entries,
  bank.session.entries.map(({ at, fishNumber, setUp, verdict }) => [
    at,
    fishNumber,
    setUp,
    verdict,
  ]),
];

test("an entry is split, and one undo puts it together again", async () => {
  const bank = new Bank();
  await bank.say("three small roach, depth half a metre", "carp two pounds");
  const before = steps(bank);
  const fish = { kind: "fish", species: "roach" } as const;
  await bank.hand.split(nth(bank, 0), [
    { ...fish, weightG: 90 },
    { ...fish, count: 2 },
  ]);
  const after = steps(bank);
  expect(bank.session.entries.map(({ statement, setUp }) => [statement.kind, setUp])).toEqual([
    ["fish", {}],
    ["fish", {}],
    ["change", { depthMm: 500 }],
    ["fish", { depthMm: 500 }],
  ]);
  expect(nth(bank, 1).heard?.text).toBe("three small roach, depth half a metre");
  await bank.hand.undo();
  expect(steps(bank)).toEqual(before);
  await bank.hand.redo();
  expect(steps(bank)).toEqual(after);
});

test("parts that are split off stay where they are when one is moved", async () => {
  const bank = new Bank();
  await bank.say("feeding", "three small roach");
  const { at } = nth(bank, 1);
  await bank.hand.split(nth(bank, 1), [{ kind: "fish" }, { kind: "fish", count: 2 }]);
  await bank.hand.correct(nth(bank, 1), nth(bank, 1).statement, at - 5 * MINUTE_MS);
  expect(bank.entries.map(({ kind }) => kind)).toEqual(["fish", "feed", "fish"]);
  expect(nth(bank, 2).at).toBe(at);
});

test("a doubtful entry that is split is settled, with all its parts", async () => {
  const bank = new Bank();
  await bank.say("3 roach thirty");
  expect(nth(bank, 0).verdict).toBe("check");
  await bank.hand.split(nth(bank, 0), [{ kind: "fish" }, { kind: "fish", count: 2 }]);
  expect(bank.session.entries.map(({ verdict }) => verdict)).toEqual(["log", "log"]);
});

test("two entries are joined in the place of the first, and one undo parts them", async () => {
  const bank = new Bank();
  await bank.say("skimmer", "fish ten ounces", "feeding");
  const before = steps(bank);
  const { at } = nth(bank, 0);
  const both = { kind: "fish", species: "skimmer", weightG: 283 } as const;
  await bank.hand.join(nth(bank, 0), nth(bank, 1), both);
  expect(bank.entries).toEqual([both, { kind: "feed" }]);
  expect(nth(bank, 0).at).toBe(at);
  await bank.hand.undo();
  expect(steps(bank)).toEqual(before);
});

test("a value and a time put right are one step", async () => {
  const bank = new Bank();
  await bank.say("feeding", "roach thirty");
  const before = steps(bank);
  await bank.hand.correct(
    nth(bank, 1),
    { kind: "sign", sort: "bite" },
    nth(bank, 0).at - MINUTE_MS,
  );
  expect(bank.entries).toEqual([{ kind: "sign", sort: "bite" }, { kind: "feed" }]);
  await bank.hand.undo();
  expect(steps(bank)).toEqual(before);
});

test("nothing is written where nothing is different", async () => {
  const bank = new Bank();
  await bank.say("carp two pounds");
  const before = bank.session;
  await bank.hand.correct(nth(bank, 0), nth(bank, 0).statement);
  expect(bank.session).toBe(before);
});

test("a heard line becomes entries at another time, and one undo makes it a line again", async () => {
  const bank = new Bank();
  await bank.say("feeding", "that was a lovely fish");
  const [line] = bank.session.heardLines;
  const fed = nth(bank, 0).at;
  await bank.hand.adopt(line?.id ?? "", [{ kind: "fish" }, { kind: "drop" }], fed - MINUTE_MS);
  expect(bank.entries.map(({ kind }) => kind)).toEqual(["fish", "drop", "feed"]);
  await bank.hand.undo();
  expect(bank.entries.map(({ kind }) => kind)).toEqual(["feed"]);
  expect(bank.session.heardLines).toEqual([line]);
});
