import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Patch } from "../../src/board/picture/teller.ts";
import { Showing } from "../../src/board/showing.ts";
import { act, at, fish, MINUTE_MS, Phones } from "./script.ts";

let told: Patch[];
let phones: Phones;
let showing: Showing;

beforeEach(() => {
  vi.useFakeTimers({ now: at(10) });
  [told, phones] = [[], new Phones()];
  showing = new Showing("peg-1", (patch) => told.push(patch));
});

afterEach(() => {
  showing.end();
  vi.useRealTimers();
});

const hear = () => showing.receive(...(phones.sent.at(-1) as (typeof phones.sent)[number]));

test("nothing is told before all that was there is read, then all of it", () => {
  phones.say("peg-2", 1, act("start"));
  hear();
  vi.advanceTimersByTime(20_000);
  expect(told).toEqual([]);
  showing.begin();
  expect(told.map(({ rows }) => rows.map(({ seat }) => seat))).toEqual([["peg-2"]]);
});

test("news is told within a second, however much there is; without any, time is told every ten", () => {
  showing.begin();
  for (let n = 0; n < 5; n += 1) {
    phones.say("peg-2", 10, fish(300));
    hear();
  }
  vi.advanceTimersByTime(1000);
  expect(told.map(({ rows }) => rows[0]?.count)).toEqual([undefined, 5]);
  vi.advanceTimersByTime(9000);
  expect(told).toHaveLength(2);
  vi.advanceTimersByTime(1000);
  expect(told).toHaveLength(3);
  expect(told[2]?.rows).toEqual([]);
});

test("after an end it begins with the whole, and in between says nothing", () => {
  phones.say("peg-2", 1, act("start"));
  hear();
  showing.begin();
  showing.end();
  vi.advanceTimersByTime(15_000);
  expect(told).toHaveLength(1);
  showing.begin();
  expect(told[1]?.rows).toHaveLength(1);
});

test("a phone whose own clock is wrong reads the board by the board's", () => {
  // The phone's clock stands at ten past, the board's at twenty past when it takes the message.
  phones.say("peg-1", 20, act("start"), { clockMs: -10 * MINUTE_MS });
  hear();
  showing.begin();
  expect(told[0]?.at).toBe(at(20));
  vi.advanceTimersByTime(5 * MINUTE_MS);
  expect(told.at(-1)?.at).toBe(at(25));
});
