import { expect, test } from "vitest";
import { patched, Teller } from "../../src/board/picture/teller.ts";
import { act, at, fish, Phones, pictureOf } from "./script.ts";

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
