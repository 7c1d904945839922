import { expect, test } from "vitest";
import { growth, interleaved, spread } from "./times.ts";

test("the exponent of a cost that grows by a power is that power", () => {
  const sizes = [500, 1000, 2000, 4000];
  for (const power of [0, 1, 1.5, 2])
    expect(
      growth(
        sizes,
        sizes.map((size) => 3 * size ** power),
      ),
    ).toBeCloseTo(power, 9);
});

test("a spread names the values that so many do not exceed", () => {
  const values = Array.from({ length: 100 }, (_, n) => 100 - n);
  expect(spread(values)).toEqual({ median: 50, p95: 95, p99: 99 });
});

test("peers are given each input in turn, as often as there are rounds", () => {
  const order: string[] = [];
  const peer = (name: string) => (input: number) => order.push(`${name}${input}`);
  const times = interleaved({ a: peer("a"), b: peer("b") }, [1, 2], 2);
  expect(order).toEqual(["a1", "b1", "a1", "b1", "a2", "b2", "a2", "b2"]);
  expect([times.a.length, times.b.length]).toEqual([2, 2]);
});
