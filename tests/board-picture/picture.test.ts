import { expect, test } from "vitest";
import { UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import { totalOf } from "../../src/analysis/weights/total.ts";
import { foldSession } from "../../src/log/fold.ts";
import { act, at, change, fish, MINUTE_MS, Phones } from "./script.ts";

const HOUR_MS = 60 * MINUTE_MS;

test("a seat's row is what its own phone would show, of an angler nobody knows", () => {
  const phones = new Phones();
  const events = [
    phones.say("peg-1", 0, act("start")),
    phones.say("peg-1", 1, change({ depthMm: 600, bait: "pellet" })),
    phones.say("peg-1", 20, fish(900)),
    phones.say("peg-1", 42, fish(500, 2)),
  ];
  phones.stand("peg-1", 2, { name: "Ada", peg: "12" });
  const row = phones.row("peg-1", 60);
  expect(row).toMatchObject({
    standing: { name: "Ada", peg: "12" },
    state: "fishing",
    count: 3,
    setUp: { depthMm: 600, bait: "pellet" },
    lastFishAt: at(42),
    rate: { now: 4, session: 3 },
    isGone: false,
    ranks: undefined,
  });
  expect(row.bag).toEqual(totalOf(foldSession("session-of-peg-1", events), UNKNOWN_BIAS));
});

test("a seat that only said who sits there has a row without a catch", () => {
  const phones = new Phones();
  phones.stand("peg-1", 0, { name: "Ada" });
  expect(phones.row("peg-1", 90)).toMatchObject({ state: undefined, count: 0, isGone: false });
});

test("the last word on who sits there stands", () => {
  const phones = new Phones();
  phones.stand("peg-1", 5, { name: "Ada", peg: "13" });
  phones.stand("peg-1", 1, { name: "Ada", peg: "12" });
  expect(phones.row("peg-1", 9).standing?.peg).toBe("13");
});

test.each([
  ["behind", -HOUR_MS],
  ["ahead", HOUR_MS],
])("a phone an hour %s is put right by what the server saw", (_, clockMs) => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"), { clockMs });
  phones.say("peg-1", 30, fish(400), { clockMs });
  phones.say("peg-1", 50, { kind: "loss", cause: "off" }, { clockMs });
  const row = phones.row("peg-1", 60);
  expect(row.lastFishAt).toBe(at(30));
  // Within the last half hour by the board's clock there was none.
  expect(row.rate).toEqual({ now: 0, session: 1 });
});

test("what was sent long after it was said keeps the time at which it was said", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"), { clockMs: 5 * MINUTE_MS });
  phones.say("peg-1", 10, fish(400), { clockMs: 5 * MINUTE_MS, lateMinutes: 90 });
  expect(phones.row("peg-1", 100)).toMatchObject({ lastFishAt: at(10), heardAt: at(100) });
});

test("hours without a word end the sums with the last one, until there is another", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, change({ depthMm: 600 }));
  phones.say("peg-1", 30, fish(400));
  expect(phones.view(59).rows[0]?.isGone).toBe(false);
  const gone = phones.view(180);
  expect(gone.rows[0]).toMatchObject({ isGone: true, heardAt: at(30), rate: { session: 2 } });
  expect(gone.pooled.depth.ranked[0]?.hours).toBeCloseTo(0.5);
  phones.say("peg-1", 180, fish(400));
  expect(phones.view(180).pooled.depth.ranked[0]?.hours).toBeCloseTo(3);
});

test("nothing is missed of a seat that has ended", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 60, act("stop"));
  expect(phones.row("peg-1", 600)).toMatchObject({ state: "ended", isGone: false });
});

test("the session begun last is shown, not one that is only prepared", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"), { session: "first" });
  phones.say("peg-1", 1, fish(400), { session: "first" });
  phones.event("peg-1", 2, { kind: "plan", plan: { peg: "7" } }, { session: "next" });
  expect(phones.row("peg-1", 3).count).toBe(1);
  phones.say("peg-1", 4, act("start"), { session: "next" });
  expect(phones.row("peg-1", 5)).toMatchObject({ count: 0, state: "fishing" });
});

test("one seat can't write into another's session by naming it", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, fish(400));
  phones.say("peg-2", 1, fish(9000), { session: "session-of-peg-1" });
  expect(phones.row("peg-1", 2).count).toBe(1);
  expect(phones.row("peg-1", 2).bag.upper).toBeLessThan(800);
});

test("damaged messages are counted, each once", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, fish(400));
  phones.send("peg-2", 1, undefined);
  phones.send("peg-2", 1, undefined);
  phones.sent.push(phones.sent[1] as (typeof phones.sent)[number]);
  const view = phones.view(5);
  expect(view.damaged).toBe(2);
  expect(view.rows.map(({ seat }) => seat)).toEqual(["peg-1"]);
});

test("the board is never shown as it was before its newest message", () => {
  const phones = new Phones();
  phones.say("peg-1", 60, fish(400));
  expect(phones.view(0).at).toBe(at(60));
});
