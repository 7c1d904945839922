/** When a reading that makes sense is still put up for a look. */
import type { Reading } from "../../grammar/read.ts";
import type { Heard, Verdict } from "../log/event.ts";

/**
 * Below this the recogniser is taken to have guessed. A choice of our own: a browser's recognisers do
 * not say what their confidence means, and a clear sentence mostly comes with more than 0.8 (from
 * memory); what the ears inside the app mean by it is measured (see src/speech/offline/fit.ts).
 */
export const LEAST_CONFIDENCE = 0.5;

/**
 * A browser's recogniser that is unsure has mostly the words right and a number wrong; the ears
 * inside the app, bound to phrases, may have taken talk for one.
 * @param confidence 0 to 1; undefined where none was given, which doubts nothing
 */
export function judge(
  reading: Reading,
  confidence: number | undefined,
  by: Heard["by"] = "web",
): Verdict {
  const isGuessed = confidence !== undefined && confidence < LEAST_CONFIDENCE;
  const matters = by === "offline" || holdsNumber(reading.statements);
  return reading.verdict === "log" && isGuessed && matters ? "check" : reading.verdict;
}

function holdsNumber(value: unknown): boolean {
  if (typeof value === "number") return true;
  return typeof value === "object" && value !== null && Object.values(value).some(holdsNumber);
}
