import type { BiteTimes } from "../../analysis/bites/drops.ts";
import { Waits } from "../../ui/charts/waits.tsx";
import { chartWords } from "../../words/charts.ts";
import type { Styles } from "../summary-text.ts";
import { bitesIn, longestWait, type SessionBites } from "./bites-of.ts";
import { levelName } from "./level-names.ts";
import { waitTicks } from "./ticks.ts";

const words = chartWords.bites;

const SHARES = [
  { at: 0, name: words.shares.none },
  { at: 0.5, name: words.shares.half },
  { at: 1, name: words.shares.all },
];

interface BitesProps {
  of: SessionBites;
  styles: Styles;
}

/** The share of drops that had a bite, rising with the wait. */
export function BitesPicture({ of, styles }: BitesProps) {
  const longest = Math.max(...of.levels.map(longestWait));
  return (
    <Waits
      curves={of.levels.map((one) => ({
        name: nameOf(of, one, styles),
        beside: words.beside(one.drops.length, bitesIn(one)),
        steps: one.curve.map(({ time, survival, lower, upper }) => ({
          after: time,
          share: 1 - survival,
          lower: 1 - upper,
          upper: 1 - lower,
        })),
        until: longestWait(one),
      }))}
      ticks={waitTicks(longest)}
      shares={SHARES}
      title={words.title(of.levels.length)}
    />
  );
}

const nameOf = ({ factor }: SessionBites, { level }: BiteTimes, { length }: Styles): string =>
  level === undefined ? words.unnamed : levelName(factor, level, length);

/** Half of the drops of each had a bite within so long, or too few to tell. */
export function biteSentences({ of, styles }: BitesProps): string[] {
  const each = of.levels.map((one) => {
    const name = nameOf(of, one, styles);
    const { median } = one;
    if (!median.tells) return words.tooFew(name, bitesIn(one), one.drops.length);
    const [value, lower] = [waitWords(median.value), waitWords(median.lower)];
    return Number.isFinite(median.upper)
      ? words.half(name, value, lower, waitWords(median.upper))
      : words.halfOpen(name, value, lower);
  });
  return of.more > 0 ? [...each, words.more(of.more)] : each;
}

/** "45 s", "3 min 20 s". @param seconds rounded to a whole one */
function waitWords(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return chartWords.seconds(whole);
  return chartWords.minutesAndSeconds(Math.floor(whole / 60), whole % 60);
}
