import type { Interval } from "../../analysis/estimate.ts";
import type { Session } from "../../log/session.ts";
import type { Tick } from "../../ui/charts/axes.tsx";
import { Climb } from "../../ui/charts/climb.tsx";
import { formatClock, formatRate, formatWeight, formatWeightLimits } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import type { Styles } from "../summary-text.ts";
import type { SessionClimb } from "./climb-of.ts";
import { clockHours } from "./clock-hours.ts";
import { weightTicks } from "./ticks.ts";

const words = chartWords.climb;

interface ClimbPictureProps {
  of: SessionClimb;
  styles: Styles;
  /** The scales of another picture beside it; its own where they are left out. */
  scale?: { to: number; topG: number; hours: readonly Tick[] };
}

/** The weight as it grew, with its limits and the turn, and the events beneath. */
export function ClimbPicture({ of, styles, scale }: ClimbPictureProps) {
  const { turn, ...laid } = of;
  return (
    <Climb
      {...laid}
      to={scale?.to ?? laid.to}
      levels={weightTicks(scale?.topG ?? topOf(of), styles.weight)}
      hours={scale?.hours ?? clockHours(laid)}
      {...(turn.is === "turned" && {
        turn: { at: turn.at, name: words.turn(formatClock(turn.at)) },
      })}
      title={words.title(
        formatClock(laid.from),
        formatClock(laid.to),
        formatWeight(spokenOf(of), styles.weight),
      )}
    />
  );
}

const spokenOf = ({ climb }: SessionClimb): number => climb.at(-1)?.value ?? 0;

/** The highest that is drawn, in grams. */
export const topOf = (of: SessionClimb): number => {
  const upper = of.band.at(-1)?.upper ?? 0;
  return Math.max(spokenOf(of), Number.isFinite(upper) ? upper : 0);
};

/** What the picture shows, a sentence each. */
export function climbSentences(
  { band, breaks, turn }: SessionClimb,
  { nets }: Pick<Session, "nets">,
  styles: Styles,
): string[] {
  const last = band.at(-1);
  const isWeighed = nets.some(({ weighedG }) => weighedG !== undefined);
  return [
    ...(last ? [isWeighed ? words.keyWeighed : words.key, reachSentence(last, styles)] : []),
    turnSentence(turn),
    ...(breaks.length > 0 ? [words.breaks(breaks.length)] : []),
  ];
}

function reachSentence(reach: Interval, { weight }: Styles): string {
  if (reach.lower === reach.upper) return words.weighed(formatWeight(reach.lower, weight));
  const { lower, upper } = formatWeightLimits(reach, weight);
  return words.likely(lower, upper);
}

function turnSentence(turn: SessionClimb["turn"]): string {
  if (turn.is === "none") return words.noTurn;
  if (turn.is === "too-few") return words.tooFew;
  const { at, before, after, chance } = turn;
  return words.turned(formatClock(at), formatRate(before), formatRate(after), chance);
}
