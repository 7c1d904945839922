import { expect, test } from "vitest";
import { NOW_MS, rateNow } from "../../src/analysis/rates/rate-now.ts";
import { foldSession } from "../../src/log/fold.ts";
import { entry, MINUTE_MS, SESSION, START } from "../log/session-script.ts";

const at = (minutes: number) => START + minutes * MINUTE_MS;
const fish = (seq: number, count = 1) => entry(seq, { kind: "fish", count });
const start = entry(0, { kind: "session", act: "start" });
const session = (...events: Parameters<typeof foldSession>[1][]) =>
  foldSession(
    SESSION,
    events.flatMap((one) => [...one]),
  );

test("too little fishing says nothing", () => {
  expect(rateNow(session([start, fish(2)]), at(9))).toEqual({ now: undefined, session: undefined });
});

test("before half an hour is over there is only the session", () => {
  const rate = rateNow(session([start, fish(5), fish(10, 2)]), at(20));
  expect(rate).toEqual({ now: undefined, session: 9 });
});

test("now is the last half hour, the session is all of it", () => {
  expect(NOW_MS).toBe(30 * MINUTE_MS);
  const rate = rateNow(session([start, fish(10), fish(50), fish(70, 3)]), at(90));
  expect(rate.now).toBe(6);
  expect(rate.session).toBeCloseTo(5 / 1.5, 12);
});

test("a break is no fishing time", () => {
  const events = [
    start,
    fish(10),
    entry(65, { kind: "session", act: "pause" }),
    entry(80, { kind: "session", act: "resume" }),
    fish(85, 2),
  ];
  const rate = rateNow(session(events), at(90));
  expect(rate.now).toBe(8);
  expect(rate.session).toBeCloseTo(3 / 1.25, 12);
});

test("after the end it stands still", () => {
  const ended = session([start, fish(50, 2), entry(60, { kind: "session", act: "stop" })]);
  expect(rateNow(ended, at(500))).toEqual(rateNow(ended, at(60)));
  expect(rateNow(ended, at(500)).session).toBe(2);
});
