/** Durations as said, in milliseconds: "three minutes", "half an hour", "a minute and a half". */
import { type Measure, readMeasure } from "./measure.ts";
import { readNumber } from "./number.ts";
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

/** What may follow each unit, and the most of it that may stand bare: "an hour twenty". */
const SMALLER: ReadonlyMap<DurationUnit, number> = new Map([
  ["h", MINUTE_MS],
  ["min", SECOND_MS],
]);

const PER_LARGER = 60;

function withSmaller(
  words: readonly string[],
  duration: Measure<DurationUnit>,
): Measure<DurationUnit> {
  const size = SMALLER.get(duration.unit);
  const joined = words[duration.next] === "and";
  const at = joined ? duration.next + 1 : duration.next;
  const number = size === undefined ? undefined : readNumber(words, at);
  if (size === undefined || !number || number.fraction || number.value >= PER_LARGER)
    return duration;
  const isNamed = DURATION_WORDS.get(words[number.next] ?? "")?.size === size;
  if (!isNamed && (joined || number.value < 10 || number.next < words.length)) return duration;
  return {
    ...duration,
    value: duration.value + number.value * size,
    next: isNamed ? number.next + 1 : number.next,
  };
}

/** The duration that starts at word `i`; a bare unit counts as one ("every minute"). */
export function readDuration(
  words: readonly string[],
  i: number,
): Measure<DurationUnit> | undefined {
  const bare = words[i - 1] === "every" ? DURATION_WORDS.get(words[i] ?? "") : undefined;
  const measured = readMeasure(words, i, DURATION_WORDS);
  if (measured) return withSmaller(words, measured);
  return bare && { value: bare.size, unit: bare.unit, next: i + 1 };
}
