import { expect, test } from "vitest";
import type { BoardRow } from "../../src/screens/app/board.ts";
import { grouped, type Order } from "../../src/screens/board/order.ts";

const rowOf = (seat: string, peg?: string, section?: string, grams = 0): BoardRow => ({
  seat,
  standing:
    peg === undefined && section === undefined
      ? undefined
      : { name: seat, ...(peg && { peg }), ...(section && { section }) },
  ...{ state: "fishing", count: 1, setUp: {}, lastFishAt: undefined, heardAt: 0, isGone: false },
  bag: { tells: true, value: grams, lower: grams, upper: grams },
  ...{ rate: { now: undefined, session: undefined }, ranks: undefined },
});

const seatsIn = (rows: readonly BoardRow[], order: Order) =>
  grouped(rows, order).map(({ section, rows }) => [section, rows.map(({ seat }) => seat).join()]);

test("pegs stand in the order of the bank: numbers as numbers, those without one last", () => {
  const pegs = ["10", "Z1", "9", "A10", "A9", "9a", "1"];
  const rows = [rowOf("zed"), rowOf("anon"), ...pegs.map((peg) => rowOf(`at-${peg}`, peg))];
  expect(seatsIn(rows, "peg")).toEqual([
    [undefined, "at-1,at-9,at-9a,at-10,at-A9,at-A10,at-Z1,anon,zed"],
  ]);
});

test("by weight the heaviest is first, equals by peg", () => {
  const rows = [
    rowOf("a", "3", undefined, 500),
    rowOf("b", "2", undefined, 900),
    rowOf("c", "1", undefined, 500),
  ];
  expect(seatsIn(rows, "weight")).toEqual([[undefined, "b,c,a"]]);
});

test("by section each has its list, by weight; those without one come last", () => {
  const rows = [
    rowOf("a", "1", "B", 100),
    rowOf("b", "2", "A", 100),
    rowOf("c", "3", "B", 200),
    rowOf("d", "4", undefined, 900),
  ];
  expect(seatsIn(rows, "section")).toEqual([
    ["A", "b"],
    ["B", "c,a"],
    [undefined, "d"],
  ]);
});
