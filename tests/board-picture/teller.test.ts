import { expect, test } from "vitest";
import { patched, Teller } from "../../src/board/picture/teller.ts";
import { act, at, change, fish, Phones, pictureOf } from "./script.ts";

test("only rows that look otherwise are told again, and the others stay the same objects", () => {
  const phones = new Phones();
  for (const seat of ["peg-1", "peg-2"]) phones.say(seat, 0, act("start"));
  const picture = pictureOf(phones.sent);
  const teller = new Teller(picture);
  const first = patched(undefined, teller.tell(at(1)));
  expect(teller.tell(at(2)).rows).toEqual([]);
  phones.say("peg-2", 3, fish(400));
  picture.receive(...(phones.sent.at(-1) as (typeof phones.sent)[number]));
  const patch = teller.tell(at(3));
  expect(patch.rows.map(({ seat }) => seat)).toEqual(["peg-2"]);
  const second = patched(first, patch);
  expect(second.rows[0]).toBe(first.rows[0]);
  expect(second.rows[1]?.count).toBe(1);
  expect(second.at).toBe(at(3));
});

test("a seat that comes later stands in its place", () => {
  const phones = new Phones();
  phones.say("peg-2", 0, act("start"));
  const picture = pictureOf(phones.sent);
  const teller = new Teller(picture);
  const first = patched(undefined, teller.tell(at(1)));
  phones.say("peg-1", 2, act("start"));
  picture.receive(...(phones.sent.at(-1) as (typeof phones.sent)[number]));
  const second = patched(first, teller.tell(at(2)));
  expect(second.rows.map(({ seat }) => seat)).toEqual(["peg-1", "peg-2"]);
});

test("what all pegs together say is told every ten seconds, and stands in between", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, change({ depthMm: 600 }));
  for (let n = 1; n <= 6; n += 1) phones.say("peg-1", n, fish(400));
  const picture = pictureOf(phones.sent);
  const teller = new Teller(picture);
  const first = patched(undefined, teller.tell(at(10)));
  expect(first.pooled).toEqual(picture.pooled(at(10)));
  const soon = teller.tell(at(10) + 9000);
  expect(soon.pooled).toBeUndefined();
  expect(patched(first, soon).pooled).toBe(first.pooled);
  expect(patched(first, teller.tell(at(10) + 10_000)).pooled.depth.ranked[0]?.hours).toBeCloseTo(
    (10 + 1 / 6) / 60,
  );
});

test("a rate goes on by itself, in steps of ten seconds", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, fish(400, 3));
  const picture = pictureOf(phones.sent);
  const rateAt = (seconds: number) => picture.view(at(12) + 1000 * seconds).rows[0]?.rate.session;
  // 3 in 12 min are 15.0 an hour; 3 in 12 min 50 s are 14.0.
  expect([rateAt(0), rateAt(41), rateAt(50)]).toEqual([15, 14, 14]);
  const first = picture.view(at(12) + 1).rows[0];
  expect(picture.view(at(12) + 10_000).rows[0]).toBe(first);
  expect(picture.view(at(12) + 10_001).rows[0]).not.toBe(first);
});
