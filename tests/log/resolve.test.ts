import { expect, test } from "vitest";
import type { Amendable, Target } from "../../grammar/statement.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { resolveTarget } from "../../src/log/resolve.ts";
import { entry, SESSION, withdraw } from "./session-script.ts";

const resolve = (events: LogEvent[], of: Target, set?: Amendable) =>
  resolveTarget(foldSession(SESSION, events), of, set);

const fish = entry(1, { kind: "fish", species: "carp" });
const three = entry(2, { kind: "fish", count: 3 });
const loss = entry(3, { kind: "loss", cause: "off" });
const depth = entry(4, { kind: "change", depthMm: 500 });
const rig = entry(5, { kind: "change", rig: "2", hook: 16 });
const fed = entry(6, { kind: "feed", bait: "pellet", amountG: 40 });
const all = [fish, three, loss, depth, rig, fed];

test("nothing to mean", () => {
  expect(resolve([], "last")).toBeUndefined();
  expect(resolve([], 1)).toBeUndefined();
  expect(resolve([loss], "last", { weightG: 900 })).toBeUndefined();
  expect(resolve([fish], 2)).toBeUndefined();
});

test("to withdraw: the latest that still counts", () => {
  expect(resolve(all, "last")).toEqual(["e6"]);
  expect(resolve([...all, withdraw(7, "e6")], "last")).toEqual(["e5"]);
});

test("to withdraw: all that was said in one breath, as far as it still counts", () => {
  const grouped = [1, 2, 3].map((seq) => entry(seq, { kind: "drop" }, { group: "breath" }));
  expect(resolve([...grouped, withdraw(4, "e2")], "last")).toEqual(["e1", "e3"]);
});

test("a fish by its number, alone even if others were said with it", () => {
  const grouped = [fish, three].map((one) => ({ ...one, group: "breath" }));
  expect(resolve(grouped, 1)).toEqual(["e1"]);
  for (const number of [2, 3, 4]) expect(resolve(grouped, number)).toEqual(["e2"]);
  expect(resolve(grouped, 5)).toBeUndefined();
  expect(resolve([...all, withdraw(7, "e1")], 1)).toEqual(["e2"]);
});

test("a fish by its number takes only what a fish has", () => {
  expect(resolve(all, 1, { lengthMm: 450 })).toEqual(["e1"]);
  expect(resolve(all, 1, { depthMm: 450 })).toBeUndefined();
});

test.each([
  [{ species: "tench" }, "e2"],
  [{ weightG: 900, species: "tench" }, "e2"],
  [{ count: 2 }, "e2"],
  [{ foul: true }, "e2"],
  [{ cause: "snapped" }, "e3"],
  [{ depthMm: 600 }, "e5"],
  [{ rig: "3" }, "e5"],
  [{ hook: 18 }, "e5"],
] as const)("to amend with %o: %s", (set, id) => {
  expect(resolve(all, "last", set)).toEqual([id]);
});

test("a bare length is the last fish's or the last change's, whichever came later", () => {
  expect(resolve([fish, depth], "last", { lengthMm: 450 })).toEqual(["e4"]);
  expect(resolve([fish, depth, rig], "last", { lengthMm: 450 })).toEqual(["e4"]);
  expect(resolve([fish, rig], "last", { lengthMm: 450 })).toEqual(["e1"]);
});

test("a bare weight or bait is the feed's only where that was said of it", () => {
  expect(resolve(all, "last", { weightG: 50 })).toEqual(["e6"]);
  expect(resolve(all, "last", { bait: "corn" })).toEqual(["e6"]);
  const plain = entry(7, { kind: "feed" });
  expect(resolve([fish, rig, plain], "last", { weightG: 50 })).toEqual(["e1"]);
  expect(resolve([fish, rig, plain], "last", { bait: "corn" })).toEqual(["e5"]);
});
