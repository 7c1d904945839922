/** A row of the board, in words. */
import { MS_PER_MINUTE } from "../../analysis/units.ts";
import { setUpText } from "../../share/summary-text.ts";
import { formatDuration, formatRate, formatWeight, formatWeightLimits } from "../../ui/format.ts";
import { boardWords } from "../../words/board.ts";
import type { BoardRow } from "../app/board.ts";
import type { Settings } from "../app.ts";

const words = boardWords.row;

/** From so long a silence on it is told; fish can be so far apart, a phone that works seldom is. */
const WORD_DUE_MIN = 10;

type Rank = NonNullable<BoardRow["ranks"]>["overall"];

export const minutesSince = (at: number, then: number): number =>
  Math.max(0, Math.floor((at - then) / MS_PER_MINUTE));

/** "Peg 12, Ada"; the seat's own name where nobody has said who sits there. */
export function whoText({ seat, standing }: BoardRow): string {
  if (!standing) return seat;
  return standing.peg === undefined ? standing.name : words.who(standing.peg, standing.name);
}

/** The weight by word, or by the scales. */
export function weightText({ bag }: BoardRow, { weight }: Settings): string {
  return formatWeight(bag.tells ? bag.value : bag.lower, weight);
}

/** How sure the weight is; empty for nothing caught. */
export function likelyText({ bag, count }: BoardRow, { weight }: Settings): string {
  if (count === 0 && bag.upper === 0) return "";
  if (bag.upper === bag.lower) return words.byScales;
  const { lower, upper } = formatWeightLimits(bag, weight);
  return Number.isFinite(bag.upper) ? words.asSpoken(lower, upper) : words.atLeast(lower);
}

/** @param minutes since the last fish */
export function caughtText({ count, state }: BoardRow, minutes: number | undefined): string {
  if (state === undefined) return words.nothing;
  if (minutes === undefined) return words.noFish;
  return words.caught(count, formatDuration(minutes * MS_PER_MINUTE));
}

/** Empty before the start. */
export function rateText({ rate, state }: BoardRow): string {
  if (state === undefined || state === "ready") return "";
  if (rate.session === undefined) return words.noRate;
  if (rate.now === undefined || state === "ended") return words.rate(formatRate(rate.session));
  return words.rates(formatRate(rate.now), formatRate(rate.session));
}

export function setUpWords({ setUp, state }: BoardRow, settings: Settings): string {
  return state === undefined ? "" : setUpText(setUp, settings);
}

export function rankText({ ranks, standing }: BoardRow): string {
  if (!ranks) return "";
  const { section, overall } = ranks;
  const overallText = words.overall(placeText(overall), overall.of);
  if (!section || standing?.section === undefined) {
    return overall.settled ? overallText : words.notSettled(overallText);
  }
  const inSection = words.inSection(standing.section, placeText(section), section.of);
  const both = words.both(inSection, placeText(overall), overall.of);
  if (section.settled && overall.settled) return both;
  if (section.settled) return words.overallOpen(both);
  return overall.settled ? words.sectionOpen(both) : words.notSettled(both);
}

const placeText = ({ place }: Rank): string => String(place);

/** What keeps it from fishing; empty while it fishes and is heard. @param quiet minutes without a word */
export function stateText({ state, isGone }: BoardRow, quiet: number): string {
  if (state === "ready" || state === "ended") return words.states[state];
  const isQuiet = state !== undefined && quiet >= WORD_DUE_MIN;
  const silence = isGone ? words.gone : words.noWord;
  return [
    state === "paused" && words.states.paused,
    isQuiet && silence(formatDuration(quiet * MS_PER_MINUTE)),
  ]
    .filter(Boolean)
    .join(" · ");
}
