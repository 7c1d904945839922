import { expect, test } from "vitest";
import { ranked } from "../../src/board/picture/ranks.ts";
import { act, fish, Phones } from "./script.ts";

const bagOf = (middleG: number, lower = middleG, upper = middleG) => ({
  middleG,
  bag: { tells: true as const, value: middleG, lower, upper },
});

const placesOf = (bags: ReturnType<typeof bagOf>[]) => {
  const ranks = ranked(bags);
  return bags.map((bag) => ranks.get(bag)?.place);
};
const settledOf = (bags: ReturnType<typeof bagOf>[]) => {
  const ranks = ranked(bags);
  return bags.map((bag) => ranks.get(bag)?.settled);
};

test("the heaviest comes first, and equal bags share the mean of their places", () => {
  expect(placesOf([bagOf(100), bagOf(300), bagOf(200)])).toEqual([3, 1, 2]);
  // Common practice in match fishing: two who tie for the first place have one and a half each.
  expect(placesOf([bagOf(300), bagOf(300), bagOf(200)])).toEqual([1.5, 1.5, 3]);
  expect(placesOf([bagOf(0), bagOf(500), bagOf(0), bagOf(0)])).toEqual([3, 1, 3, 3]);
  expect(placesOf([])).toEqual([]);
});

test("a place is settled only where no other's limits reach into it", () => {
  expect(settledOf([bagOf(300, 250, 350), bagOf(200, 150, 260), bagOf(90, 80, 100)])).toEqual([
    false,
    false,
    true,
  ]);
  // Not the neighbour but one further down reaches up.
  expect(settledOf([bagOf(300, 290, 310), bagOf(280, 275, 285), bagOf(200, 100, 305)])).toEqual([
    false,
    false,
    false,
  ]);
  // Nor is it the neighbour above that reaches down.
  expect(settledOf([bagOf(300, 100, 500), bagOf(280, 275, 285), bagOf(200, 190, 210)])).toEqual([
    false,
    false,
    false,
  ]);
  expect(settledOf([bagOf(300), bagOf(300), bagOf(0), bagOf(0)])).toEqual([true, true, true, true]);
});

function match(): Phones {
  const phones = new Phones();
  const bags = { "peg-1": 900, "peg-2": 300, "peg-3": 600, "peg-4": 2500 };
  for (const [seat, grams] of Object.entries(bags)) {
    phones.say(seat, 0, act("start"));
    phones.say(seat, 10, fish(grams));
  }
  return phones;
}

test("without a match nobody is ranked", () => {
  expect(match().row("peg-1", 20).ranks).toBeUndefined();
});

test("sections rank their own, and all are ranked over all", () => {
  const phones = match();
  phones.stand("peg-1", 1, { name: "Ada", section: "A" });
  phones.stand("peg-2", 1, { name: "Bo", section: "A" });
  phones.stand("peg-3", 1, { name: "Cy", section: "B" });
  expect(
    phones.view(20).rows.map(({ ranks }) => [ranks?.section?.place, ranks?.overall.place]),
  ).toEqual([
    [1, 2],
    [2, 4],
    [1, 3],
    [undefined, 1],
  ]);
  expect(phones.row("peg-1", 20).ranks?.section).toEqual({ place: 1, of: 2, settled: true });
});

test("a session that was set up as a match is one without sections too", () => {
  const phones = match();
  phones.event("peg-1", 0, { kind: "plan", plan: { method: "match" } });
  expect(phones.row("peg-4", 20).ranks).toMatchObject({
    section: undefined,
    overall: { place: 1, of: 4 },
  });
});

test("fish nobody weighed leave the place open", () => {
  const phones = match();
  phones.stand("peg-1", 1, { name: "Ada", section: "A" });
  phones.say("peg-5", 0, fish());
  expect(phones.row("peg-5", 20)).toMatchObject({
    bag: { tells: false },
    ranks: { overall: { place: 5, settled: false } },
  });
});
