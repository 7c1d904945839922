import { recognizeDimension } from "@microsoft/recognizers-text-number-with-unit";
import { describe, expect, it } from "vitest";
import { readCount } from "../../grammar/quantity/count.ts";
import { readDuration } from "../../grammar/quantity/duration.ts";
import { readLength } from "../../grammar/quantity/length.ts";
import { readNumber } from "../../grammar/quantity/number.ts";
import { readTemperature } from "../../grammar/quantity/temperature.ts";
import { readWeight } from "../../grammar/quantity/weight.ts";
import { createReader } from "../../grammar/read.ts";
import { tokenise } from "../../grammar/text/tokens.ts";
import {
  durations,
  hookSizes,
  lengths,
  temperatures,
  times,
  weights,
} from "./tables/quantities.ts";

type Read = (words: readonly string[], i: number) => { value: number; next: number } | undefined;

/** The value, if the reader takes the whole text. */
function whole(read: Read, text: string): number | undefined {
  const words = tokenise(text).map(({ word }) => word);
  const found = read(words, 0);
  return found?.next === words.length ? found.value : undefined;
}

const reader = createReader();

/** Texts that say no unit are a weight only where a fish is named. */
const withoutUnit = /^[\w\s.:½¼¾/-]*$/;

describe("weights", () => {
  it.each(weights)("%s", (text, grams) => {
    const read = whole(readWeight, text);
    const fish = reader.read([`carp ${text}`]).statements[0];
    const value =
      read ?? (withoutUnit.test(text) && fish?.kind === "fish" ? fish.weightG : undefined);
    expect(value).toBeCloseTo(grams, 6);
  });
});

describe("lengths", () => {
  it.each(lengths)("%s", (text, millimetres) => {
    const change = reader.read([`depth ${text}`]).statements[0];
    const bare = change?.kind === "change" ? change.depthMm : undefined;
    expect(whole(readLength, text) ?? bare).toBeCloseTo(millimetres, 6);
  });
});

describe("durations", () => {
  it.each(durations)("%s", (text, milliseconds) => {
    const remind = reader.read([`nudge me every ${text.replace(/^every /, "")}`]).statements[0];
    const value =
      whole(readDuration, text) ?? (remind?.kind === "remind" ? remind.everyMs : undefined);
    expect(value).toBeCloseTo(milliseconds, 6);
  });
});

describe("temperatures", () => {
  it.each(temperatures)("%s", (text, celsius) => {
    const conditions = reader.read([`water ${text}`]).statements[0];
    const bare = conditions?.kind === "conditions" ? conditions.waterC : undefined;
    expect(whole(readTemperature, text) ?? bare).toBeCloseTo(celsius, 6);
  });
});

describe("times and hook sizes", () => {
  it.each(times)("fed %s", (text, count) => {
    const feed = reader.read([`fed ${text}`]).statements[0];
    expect(feed?.kind === "feed" ? feed.times : undefined).toBe(count);
  });

  it.each(hookSizes)("%s", (text, size) => {
    const said = /hook|size|\bno\b|number/.test(text) ? text : `gone down to ${text} hook`;
    const change = reader.read([said]).statements[0];
    expect(change?.kind === "change" ? change.hook : undefined).toBe(size);
  });

  it("counts a brace and half a dozen", () => {
    expect(readCount(["a", "brace"], 0)).toEqual({ value: 2, next: 2 });
    expect(readCount(["half", "a", "dozen"], 0)).toEqual({ value: 6, next: 3 });
  });
});

describe("numbers that were once misread", () => {
  it.each([
    ["two point oh five", 2.05],
    ["one point twenty five", 1.25],
    ["a hundred and five", 105],
    ["two thousand", 2000],
    ["point five", 0.5],
    ["2 1/2", 2.5],
    ["½", 0.5],
    ["nine hundred and ninety nine", 999],
  ])("%s", (text, value) => expect(whole(readNumber, text)).toBe(value));
});

/**
 * The second reader: npm @microsoft/recognizers-text-number-with-unit, an independent reader of
 * plain number-and-unit phrases. It never adds compounds ("two pounds eight"), so only texts that it
 * takes whole, as one quantity, are held against it.
 */
describe("the second reader", () => {
  const UNITS: Readonly<Record<string, number>> = {
    Pound: 453.59237,
    Ounce: 28.349523125,
    Kilogram: 1000,
    Gram: 1,
    Stone: 6350.29318,
    Inch: 25.4,
    Foot: 304.8,
    Centimeter: 10,
    Meter: 1000,
    Millimeter: 1,
    Yard: 914.4,
  };

  const second = (text: string): number | undefined => {
    const [only, ...others] = recognizeDimension(text, "en-us");
    if (!only || others.length > 0 || only.text.length !== text.length) return undefined;
    const unit = UNITS[only.resolution?.unit];
    const value = only.resolution?.value;
    return unit === undefined || value == null ? undefined : Number(value) * unit;
  };

  /** It reads the printed sign ½ before a unit as nought. */
  const isSoundFor = (text: string): boolean => !/^[½¼¾]/.test(text);

  const compared = [...weights, ...lengths]
    .filter(([text]) => isSoundFor(text))
    .flatMap(([text]) => {
      const value = second(text);
      return value === undefined ? [] : [[text, value] as const];
    });

  it("reads enough of the tables to be worth asking", () => {
    expect(compared.length).toBeGreaterThanOrEqual(60);
  });

  it.each(compared)("agrees on %s", (text, value) => {
    expect(whole(readWeight, text) ?? whole(readLength, text)).toBeCloseTo(value, 6);
  });
});
