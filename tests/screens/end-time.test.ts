import { expect, test } from "vitest";
import { endAt } from "../../src/screens/set-up/end-time.ts";

const moment = (day: number, hours: number, minutes = 0) =>
  new Date(2026, 5, day, hours, minutes).getTime();

test.each([
  ["15:30", moment(6, 9), moment(6, 15, 30)],
  ["09:00", moment(6, 9), moment(6, 9)],
  ["01:15", moment(6, 21), moment(7, 1, 15)],
])("%s", (clock, from, end) => expect(endAt(clock, from)).toBe(end));

test.each(["", "soon", "12"])("%j is no time of day", (clock) => {
  expect(endAt(clock, moment(6, 9))).toBeUndefined();
});
