import { describe, expect, it } from "vitest";
import { joinCumulative, remainder } from "../../src/speech/finals.ts";

describe("remainder", () => {
  it.each([
    ["fish two pounds", "fish two pounds", ""],
    ["Fish, two pounds.", "fish two pounds", ""],
    ["fish", "fish two pounds", ""],
    ["fish two pounds feeding", "fish two pounds", "feeding"],
    ["Fish two pounds - Feeding now", "fish two pounds", "Feeding now"],
    ["fish £2", "fish two pounds", undefined],
    ["feeding", "fish two pounds", undefined],
    ["fishing", "fish", undefined],
    ["fish", "", "fish"],
    ["", "fish", ""],
  ])("of %j after %j is %j", (text, taken, added) => {
    expect(remainder(text, taken)).toBe(added);
  });
});

describe("joinCumulative", () => {
  it.each([
    [[], ""],
    [["bite"], "bite"],
    [["fish", "fish two", "fish two pounds"], "fish two pounds"],
    [["fish two pounds", "fish two"], "fish two pounds"],
    [["fish", "two pounds"], "fish two pounds"],
    [["fish", "two pounds", "fish two pounds feeding"], "fish two pounds feeding"],
  ])("of %j is %j", (pieces, whole) => {
    expect(joinCumulative(pieces)).toBe(whole);
  });
});
