/**
 * Quantities for the eyes. The log keeps full precision; rounding happens here, once, on the way to
 * the screen. Grams, millimetres and milliseconds in, short text out.
 */

/** Exact by the international yard and pound agreement of 1959. */
const GRAMS_PER_OUNCE = 28.349523125;
const OUNCES_PER_POUND = 16;
export const GRAMS_PER_POUND = GRAMS_PER_OUNCE * OUNCES_PER_POUND;
export const MM_PER_INCH = 25.4;

export type WeightStyle = "lb-oz" | "kg";
export type LengthStyle = "cm" | "in";

/** Scales on the bank show whole ounces; a single fish may be spoken of in quarters. */
export type Fineness = "whole" | "quarter";

/** "12 lb 4 oz", "2 lb 8¼ oz", "14 oz", "0 lb"; "5.56 kg", "180 g". `grams` ≥ 0. */
export function formatWeight(
  grams: number,
  style: WeightStyle,
  fineness: Fineness = "whole",
): string {
  if (style === "kg") return formatKilos(grams);
  const perOunce = fineness === "quarter" ? 4 : 1;
  const parts = Math.round((grams / GRAMS_PER_OUNCE) * perOunce);
  const pounds = Math.floor(parts / (OUNCES_PER_POUND * perOunce));
  const ounces = withQuarters((parts / perOunce) % OUNCES_PER_POUND);
  if (pounds === 0) return parts === 0 ? "0 lb" : `${ounces} oz`;
  return ounces === "0" ? `${pounds} lb` : `${pounds} lb ${ounces} oz`;
}

function formatKilos(grams: number): string {
  const whole = Math.round(grams);
  if (whole === 0) return "0 kg";
  return whole < 1000 ? `${whole} g` : `${(grams / 1000).toFixed(2)} kg`;
}

/** From here on limits are told in whole pounds or kilos: finer ones would claim to know more. */
const ROUGH_FROM_G = 4 * GRAMS_PER_POUND;

/** Limits of a weight, rounded outward; the upper one may be without end. Grams, 0 ≤ lower ≤ upper. */
export function formatWeightLimits(
  { lower, upper }: { lower: number; upper: number },
  style: WeightStyle,
): { lower: string; upper: string } {
  const isRough = upper >= ROUGH_FROM_G;
  const [whole, fine, unit] =
    style === "kg" ? [1000, 10, "kg"] : [GRAMS_PER_POUND, GRAMS_PER_OUNCE, "lb"];
  const write = (grams: number, outward: (steps: number) => number) =>
    isRough
      ? `${outward(grams / whole)} ${unit}`
      : formatWeight(outward(grams / fine) * fine, style);
  return { lower: write(lower, Math.floor), upper: write(upper, Math.ceil) };
}

/** A fish's length or a depth: "45 cm", "40.5 cm", "1.2 m" from a metre up; "16¼ in". */
export function formatLength(mm: number, style: LengthStyle): string {
  if (style === "in") return `${withQuarters(Math.round((mm / MM_PER_INCH) * 4) / 4)} in`;
  const centimetres = Math.round(mm / 5) / 2;
  return Math.abs(centimetres) < 100
    ? `${centimetres} cm`
    : `${trimmed(Math.round(centimetres) / 100, 2)} m`;
}

/** How far out, which is spoken of in metres whatever else is: "11.5 m". */
export const formatDistance = (mm: number): string => `${trimmed(mm / 1000, 1)} m`;

/** A clock that runs: "0:07", "4:12", "1:04:12". */
export function formatElapsed(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const tail = `${h > 0 ? twoDigits(m) : m}:${twoDigits(s)}`;
  return h > 0 ? `${h}:${tail}` : tail;
}

/** A span of time in words, to the minute: "under a minute", "12 min", "2 h", "3 h 20 min". */
export function formatDuration(ms: number): string {
  const minutes = Math.floor(Math.max(0, ms) / 60_000);
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  if (minutes === 0) return "under a minute";
  if (h === 0) return `${m} min`;
  return m === 0 ? `${h} h` : `${h} h ${m} min`;
}

/** The time of day where the phone is, "09:05"; `at` in milliseconds since the epoch. */
export function formatClock(at: number): string {
  const date = new Date(at);
  return `${twoDigits(date.getHours())}:${twoDigits(date.getMinutes())}`;
}

/** Fish an hour, to a tenth below ten: "4.2", "12". */
export const formatRate = (perHour: number): string =>
  perHour < 9.95 ? perHour.toFixed(1) : String(Math.round(perHour));

/** "1 fish", "3 fish": the plural that most things on the bank have, or the one given. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

const QUARTERS = ["", "¼", "½", "¾"];

function withQuarters(value: number): string {
  const size = Math.abs(value);
  const whole = Math.floor(size);
  const quarter = QUARTERS[Math.round((size - whole) * 4)] ?? "";
  return `${value < 0 ? "-" : ""}${whole === 0 && quarter ? "" : whole}${quarter}`;
}

const trimmed = (value: number, decimals: number): string =>
  String(Number(value.toFixed(decimals)));

const twoDigits = (value: number): string => String(value).padStart(2, "0");
