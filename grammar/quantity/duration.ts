/** Durations as said, in milliseconds: "three minutes", "half an hour", "a minute and a half". */
import { type Measure, readMeasure } from "./measure.ts";
import type { UnitWord } from "./units.ts";

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const HOUR_MS = 60 * MINUTE_MS;

type DurationUnit = "s" | "min" | "h";

const DURATION_WORDS: ReadonlyMap<string, UnitWord<DurationUnit>> = new Map([
  ...["second", "seconds", "sec", "secs"].map((word): [string, UnitWord<DurationUnit>] => [
    word,
    { unit: "s", size: SECOND_MS },
  ]),
  ...["minute", "minutes", "min", "mins"].map((word): [string, UnitWord<DurationUnit>] => [
    word,
    { unit: "min", size: MINUTE_MS },
  ]),
  ...["hour", "hours", "hr", "hrs"].map((word): [string, UnitWord<DurationUnit>] => [
    word,
    { unit: "h", size: HOUR_MS },
  ]),
]);

/** The duration that starts at word `i`; a bare unit counts as one ("every minute"). */
export function readDuration(
  words: readonly string[],
  i: number,
): Measure<DurationUnit> | undefined {
  const bare = words[i - 1] === "every" ? DURATION_WORDS.get(words[i] ?? "") : undefined;
  return (
    readMeasure(words, i, DURATION_WORDS) ??
    (bare && { value: bare.size, unit: bare.unit, next: i + 1 })
  );
}
