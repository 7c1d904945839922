/** The picture that goes out, without its chart: type and paper alone, in attributes of its own. */
import { formatWeight } from "../../ui/format.ts";
import { passOnWords } from "../../words/pass-on.ts";
import { summaryTextWords } from "../../words/summary-text.ts";
import type { Allowed } from "../allowed.ts";
import { allowedOf, type Summary } from "../summary.ts";
import { headLines, inShort, type Styles, setUpLines } from "../summary-text.ts";
import { wrap } from "./wrap.ts";

export const CARD_WIDTH = 1080;
const MARGIN = 60;
export const CHART_WIDTH = CARD_WIDTH - 2 * MARGIN;
const TOP = 50;
const GAP = 30;
const FOOT = 110;
/** From one line of a text to the next, in sizes of its letters. */
const LEADING = 1.25;

const words = passOnWords.card;

const FONT = '"Trebuchet MS", "Segoe UI", system-ui, sans-serif';
const INK = "#0b2627";
const PAPER = "#fff8e7";
const WATER = "#0b3b3c";

/** A line's letters, how far below the one before it stands, and how heavy it is. */
const SIZES = {
  head: { size: 40, step: 54, weight: 800 },
  numeral: { size: 128, step: 150, weight: 800 },
  title: { size: 40, step: 72, weight: 800 },
  body: { size: 36, step: 58, weight: 400 },
} as const;

/** The width of a text in pixels, in a font as CSS writes it. */
export type TextWidth = (text: string, font: string) => number;

interface Line {
  text: string;
  as: keyof typeof SIZES;
}

/** Set-ups and notes beyond these are only counted: the picture is to be read at a glance. */
const MOST_SET_UPS = 4;
const MOST_NOTES = 4;
/** Of a longer text its beginning stands for it: phones draw no picture of any height. */
const MOST_LETTERS = 400;

interface CardProps {
  summary: Summary;
  styles: Styles;
  allowed: Allowed;
  /** How high the chart will be; it is put into the element of the class `card-chart`. */
  chartHeight: number;
  textWidth: TextWidth;
}

/** Everything on it is shown as text: what was noted or named can't bring marks of its own. */
export function Card({ summary, styles, allowed, chartHeight, textWidth }: CardProps) {
  const told = allowedOf(summary, allowed);
  const above = lay([...head(told), ...numerals(told, styles), ...body(told, styles)], textWidth);
  const below = lay(story(told, styles), textWidth);
  const chartTop = TOP + above.height + GAP;
  const belowTop = chartTop + chartHeight;
  const height = belowTop + below.height + FOOT;
  const lines = [...shifted(above.lines, TOP), ...shifted(below.lines, belowTop)];
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${CARD_WIDTH} ${height}`}
      width={CARD_WIDTH}
      height={height}
      font-family={FONT}
      fill={INK}
      role="img"
      aria-label={headLines(told).join(", ")}
    >
      <rect width={CARD_WIDTH} height={height} fill={PAPER} />
      <rect width={CARD_WIDTH} height="24" fill={WATER} />
      {lines.map(({ text, y, as }) => (
        <text key={y} x={MARGIN} y={y} font-size={SIZES[as].size} font-weight={SIZES[as].weight}>
          {text}
        </text>
      ))}
      <svg
        class="card-chart"
        x={MARGIN}
        y={chartTop}
        width={CHART_WIDTH}
        height={Math.max(1, chartHeight)}
      />
      <text x={CARD_WIDTH - MARGIN} y={height - 36} font-size="30" text-anchor="end">
        {words.by}
      </text>
    </svg>
  );
}

const head = (told: Summary): Line[] => headLines(told).map((text) => ({ text, as: "head" }));

function numerals({ count, spokenG, unweighed }: Summary, { weight }: Styles): Line[] {
  if (unweighed === count) return [{ text: words.fish(count), as: "numeral" }];
  return [
    { text: formatWeight(spokenG, weight), as: "numeral" },
    { text: words.asSpoken(count, unweighed), as: "title" },
  ];
}

const body = (told: Summary, styles: Styles): Line[] =>
  inShort(told, styles).map((text) => ({ text, as: "body" }));

function story(told: Summary, styles: Styles): Line[] {
  const { titles } = summaryTextWords;
  const notes = told.notes.map(({ text }) => text);
  return [
    ...section(titles.setUps, setUpLines(told, styles), MOST_SET_UPS),
    ...section(titles.notes, notes, MOST_NOTES),
  ];
}

function section(title: string, lines: readonly string[], most: number): Line[] {
  if (lines.length === 0) return [];
  const rest = lines.length - most;
  return [
    { text: title, as: "title" },
    ...lines.slice(0, most).map((text): Line => ({ text, as: "body" })),
    ...(rest > 0 ? [{ text: words.more(rest), as: "body" } satisfies Line] : []),
  ];
}

const drawable = (text: string): string =>
  text.length <= MOST_LETTERS ? text : `${text.slice(0, MOST_LETTERS)}…`;

interface Laid extends Line {
  y: number;
}

/** Lines wrapped and set below each other. */
function lay(lines: readonly Line[], textWidth: TextWidth): { lines: Laid[]; height: number } {
  let y = 0;
  const laid = lines.flatMap(({ text, as }) => {
    const { size, step, weight } = SIZES[as];
    const width = (part: string) => textWidth(part, `${weight} ${size}px ${FONT}`);
    return wrap(drawable(text), CHART_WIDTH, width).map((part, place): Laid => {
      y += place === 0 ? step : size * LEADING;
      return { text: part, as, y };
    });
  });
  return { lines: laid, height: y };
}

const shifted = (lines: readonly Laid[], by: number): Laid[] =>
  lines.map((line) => ({ ...line, y: line.y + by }));
