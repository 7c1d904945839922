import fc from "fast-check";
import { expect, test } from "vitest";
import {
  formatClock,
  formatDistance,
  formatDuration,
  formatElapsed,
  formatLength,
  formatRate,
  formatWeight,
  formatWeightLimits,
  GRAMS_PER_POUND,
  MM_PER_INCH,
} from "../../src/ui/format.ts";
import { formatDay } from "../../src/ui/format-day.ts";

const OUNCE = GRAMS_PER_POUND / 16;

// Exact by the international yard and pound agreement of 1959.
test("a pound is 453.59237 g and an inch 25.4 mm", () => {
  expect(GRAMS_PER_POUND).toBe(453.59237);
  expect(MM_PER_INCH).toBe(25.4);
});

test.each([
  [27_980.6, 66_876.3, "lb-oz", "61 lb", "148 lb"],
  [510, 1020, "lb-oz", "1 lb 1 oz", "2 lb 4 oz"],
  [27_980.6, 66_876.3, "kg", "27 kg", "67 kg"],
  [514, 1021, "kg", "510 g", "1.03 kg"],
] as const)(
  "limits from %d to %d grams are told in %s as %s to %s, never narrower than they are",
  (lower, upper, style, least, most) => {
    expect(formatWeightLimits({ lower, upper }, style)).toEqual({ lower: least, upper: most });
  },
);

test.each([
  [0, "0 lb"],
  [0.4 * OUNCE, "0 lb"],
  [14 * OUNCE, "14 oz"],
  [15.6 * OUNCE, "1 lb"],
  [GRAMS_PER_POUND, "1 lb"],
  [2.5 * GRAMS_PER_POUND, "2 lb 8 oz"],
  [31.6 * OUNCE, "2 lb"],
  [60 * GRAMS_PER_POUND, "60 lb"],
  [1000, "2 lb 3 oz"],
])("%d g is %s to the whole ounce", (grams, text) => {
  expect(formatWeight(grams, "lb-oz")).toBe(text);
});

test.each([
  [40.25 * OUNCE, "2 lb 8¼ oz"],
  [2.5 * OUNCE, "2½ oz"],
  [0.75 * OUNCE, "¾ oz"],
  [15.9 * OUNCE, "1 lb"],
])("%d g is %s to the quarter of an ounce", (grams, text) => {
  expect(formatWeight(grams, "lb-oz", "quarter")).toBe(text);
});

test.each([
  [0, "0 kg"],
  [180, "180 g"],
  [999.6, "1.00 kg"],
  [5555, "5.55 kg"],
  [27215.5422, "27.22 kg"],
])("%d g is %s in kilos", (grams, text) => {
  expect(formatWeight(grams, "kg")).toBe(text);
});

test("what is shown in ounces lies within half an ounce, and never shows sixteen of them", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 200_000, noNaN: true }), (grams) => {
      const text = formatWeight(grams, "lb-oz");
      const pounds = Number(/(\d+) lb/.exec(text)?.[1] ?? 0);
      const ounces = Number(/(\d+) oz/.exec(text)?.[1] ?? 0);
      expect(ounces).toBeLessThan(16);
      expect(Math.abs(pounds * 16 + ounces - grams / OUNCE)).toBeLessThanOrEqual(0.5 + 1e-9);
    }),
  );
});

test.each([
  [400, "cm", "40 cm"],
  [405, "cm", "40.5 cm"],
  [996, "cm", "99.5 cm"],
  [999, "cm", "1 m"],
  [1200, "cm", "1.2 m"],
  [1800, "cm", "1.8 m"],
  [16.25 * MM_PER_INCH, "in", "16¼ in"],
  [16 * MM_PER_INCH, "in", "16 in"],
] as const)("%d mm in %s is %s", (mm, style, text) => {
  expect(formatLength(mm, style)).toBe(text);
});

test.each([
  [11_000, "11 m"],
  [11_500, "11.5 m"],
])("%d mm out is %s", (mm, text) => expect(formatDistance(mm)).toBe(text));

test.each([
  [-5, "0:00"],
  [7_999, "0:07"],
  [252_000, "4:12"],
  [3_599_999, "59:59"],
  [3_852_000, "1:04:12"],
])("%d ms run on a clock as %s", (ms, text) => expect(formatElapsed(ms)).toBe(text));

test.each([
  [59_999, "under a minute"],
  [720_000, "12 min"],
  [7_200_000, "2 h"],
  [12_000_000, "3 h 20 min"],
])("%d ms are %s", (ms, text) => expect(formatDuration(ms)).toBe(text));

test.each([
  [0, "0.0"],
  [4.24, "4.2"],
  [9.94, "9.9"],
  [9.96, "10"],
  [12.4, "12"],
])("%d an hour is %s", (perHour, text) => expect(formatRate(perHour)).toBe(text));

test("days and times are those of the place", () => {
  const at = new Date(2026, 5, 6, 9, 5).getTime();
  expect(formatClock(at)).toBe("09:05");
  expect(formatDay(at)).toBe("Saturday 6 June 2026");
  expect(formatDay(1e300)).toBe("Invalid Date");
});
