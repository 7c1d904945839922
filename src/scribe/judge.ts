/** When a reading that makes sense is still put up for a look. */
import type { Reading } from "../../grammar/read.ts";
import type { Verdict } from "../log/event.ts";

/**
 * Below this the recogniser is taken to have guessed its numbers. A choice of our own: recognisers
 * do not say what their confidence means, and a clear sentence mostly comes with more than 0.8 (from
 * memory).
 */
export const LEAST_CONFIDENCE = 0.5;

/** @param confidence 0 to 1; undefined where none was given, which doubts nothing */
export function judge(reading: Reading, confidence: number | undefined): Verdict {
  const isGuessed = confidence !== undefined && confidence < LEAST_CONFIDENCE;
  const hasNumbers = holdsNumber(reading.statements);
  return reading.verdict === "log" && isGuessed && hasNumbers ? "check" : reading.verdict;
}

function holdsNumber(value: unknown): boolean {
  if (typeof value === "number") return true;
  return typeof value === "object" && value !== null && Object.values(value).some(holdsNumber);
}
