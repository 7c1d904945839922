import { expect, test } from "vitest";
import { soundAlikes } from "../../src/screens/review/sound-alikes.ts";

test.each([
  ["skimmer fifteen ounces", ["skimmer fifty ounces"]],
  ["carp 14 oz", ["carp 40 oz"]],
  [
    "roach thirty",
    [
      "roach thirteen",
      "roach thirty ounces",
      "roach thirty centimetres",
      "roach thirteen ounces",
      "roach thirteen centimetres",
    ],
  ],
  ["F1 two eight", ["F1 two eight ounces", "F1 two eight centimetres"]],
  ["feeding", []],
  ["carp two pounds", []],
  ["", []],
])("%s", (line, alikes) => {
  expect(soundAlikes(line)).toEqual(alikes);
});

test("a line of thousands of numbers has no more than a few", () => {
  expect(soundAlikes("13 ".repeat(3000)).length).toBeLessThan(25);
});
