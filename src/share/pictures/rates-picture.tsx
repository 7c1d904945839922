import type { Factor } from "../../analysis/effort/exposure.ts";
import { Intervals } from "../../ui/charts/intervals.tsx";
import { formatRate } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import type { Styles } from "../summary-text.ts";
import { hoursText } from "./hours-text.ts";
import { levelName } from "./level-names.ts";
import { type LevelRate, type Rates, topRate } from "./rates-of.ts";
import { rateTicks } from "./ticks.ts";

const words = chartWords.rates;

interface RatesPictureProps {
  of: Rates;
  styles: Styles;
  /** Where the scale must reach, per hour, so that another picture beside it has the same. */
  top?: number;
}

/** Fish an hour at each level, with limits, on one scale. */
export function RatesPicture({ of, styles, top }: RatesPictureProps) {
  const { factor, levels } = of;
  const rows = levels.map((one) => ({
    name: levelName(factor, one.level, styles.length),
    beside: besideOf(one),
    lower: one.fishPerHour.lower,
    upper: one.fishPerHour.upper,
    ...(one.fishPerHour.tells && { value: one.fishPerHour.value }),
  }));
  return (
    <Intervals
      rows={rows}
      ticks={rateTicks(top ?? topRate(levels))}
      title={words.title(factorName(factor))}
    />
  );
}

export const factorName = (factor: Factor): string => words.factors[factor].toLowerCase();

function besideOf({ fish, hours, sessions }: LevelRate): string {
  const time = hoursText(hours);
  return sessions === undefined
    ? words.beside(fish, time)
    : words.besideSessions(fish, time, sessions);
}

/** Which is best, or why it cannot be told. */
export function verdictSentence({ factor, verdict, leader }: Rates, { length }: Styles): string {
  if (!leader) return words.none(factorName(factor));
  const name = levelName(factor, leader.level, length);
  const { clear, alone, ...others } = words.verdicts;
  if (verdict === "clear") return clear(name, leader.chance);
  return verdict === "alone" ? alone(name) : others[verdict];
}

/** Each rate with its limits, in words. */
export const rateSentences = ({ factor, levels }: Rates, { length }: Styles): string[] =>
  levels.map(({ level, fishPerHour }) => {
    const name = levelName(factor, level, length);
    const { lower, upper } = fishPerHour;
    if (fishPerHour.tells) {
      return words.told(name, formatRate(fishPerHour.value), formatRate(lower), formatRate(upper));
    }
    return Number.isFinite(upper) ? words.tooFew(name, formatRate(upper)) : words.nothing(name);
  });
