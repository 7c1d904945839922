import { expect, test } from "vitest";
import { comparePlaces, type Place } from "../../src/log/order.ts";

/** Each comes before the next, by the first of time, device, number and id that differs. */
const IN_ORDER: readonly Place[] = [
  { at: 1, device: "b", seq: 9, id: "z" },
  { at: 2, device: "B", seq: 9, id: "z" },
  { at: 2, device: "a", seq: 9, id: "z" },
  { at: 2, device: "b", seq: 2, id: "z" },
  { at: 2, device: "b", seq: 10, id: "x" },
  { at: 2, device: "b", seq: 10, id: "y" },
];

test("time, then device by code unit, then number, then id", () => {
  IN_ORDER.forEach((a, i) => {
    IN_ORDER.forEach((b, j) => {
      expect(Math.sign(comparePlaces(a, b))).toBe(Math.sign(i - j));
    });
  });
});
