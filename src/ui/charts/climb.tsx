import { scaleLinear } from "d3-scale";
import { area, curveStepAfter, line } from "d3-shape";
import { useId } from "preact/hooks";
import { Foot, Hatch, Levels, type Tick } from "./axes.tsx";
import { Chart } from "./chart.tsx";
import { MARKS, MIDDLE, WIDTH } from "./marks.ts";

/** What had been reached from a moment on. */
export interface Reached {
  at: number;
  value: number;
}

export interface Reach {
  at: number;
  lower: number;
  upper: number;
}

export interface EventRow {
  name: string;
  at: readonly number[];
}

interface ClimbProps {
  /** The ends of the time shown, in milliseconds since whatever moment the others count from too. */
  from: number;
  to: number;
  /** In order of time, like the band. */
  climb: readonly Reached[];
  band: readonly Reach[];
  /** The highest level is the top of the picture. */
  levels: readonly Tick[];
  hours: readonly Tick[];
  breaks: readonly { from: number; to: number }[];
  rows: readonly EventRow[];
  /** A moment to be told from the others. */
  turn?: Tick;
  title: string;
}

const LEFT = 62;
const RIGHT = WIDTH - 10;
const TOP = 26;
const FOOT = 190;
const ROW = 24;

/** What grew over time, how sure it is, and beneath it what happened when. */
export function Climb(props: ClimbProps) {
  const { from, to, climb, band, levels, hours, breaks, rows, turn, title } = props;
  const hatch = useId();
  const x = scaleLinear([from, Math.max(to, from + 1)], [LEFT, RIGHT]);
  const y = scaleLinear([0, levels.at(-1)?.at || 1], [FOOT, TOP]).clamp(true);
  const height = FOOT + 26 + rows.length * ROW;
  const steps = line<Reached>(
    ({ at }) => x(at),
    ({ value }) => y(value),
  ).curve(curveStepAfter);
  const limits = area<Reach>()
    .x(({ at }) => x(at))
    .y0(({ lower }) => y(lower))
    .y1(({ upper }) => y(upper))
    .curve(curveStepAfter);
  const lastReach = band.at(-1);
  return (
    <Chart height={height} title={title}>
      <Hatch id={hatch} />
      {breaks.map((one) => (
        <rect
          key={one.from}
          {...MARKS.rest}
          x={x(one.from)}
          y={TOP}
          width={x(one.to) - x(one.from)}
          height={height - TOP - 4}
        />
      ))}
      <Levels ticks={levels} y={y} left={LEFT} right={RIGHT} />
      {lastReach && (
        <path
          {...MARKS.hatch}
          fill={`url(#${hatch})`}
          d={limits([...band, { ...lastReach, at: to }]) ?? ""}
        />
      )}
      <path
        {...MARKS.line}
        d={
          steps([{ at: from, value: 0 }, ...climb, { at: to, value: climb.at(-1)?.value ?? 0 }]) ??
          ""
        }
      />
      {turn && <Turn turn={turn} x={x(turn.at)} />}
      <Foot ticks={hours} x={x} y={FOOT} />
      {rows.map((row, place) => (
        <Events key={row.name} row={row} x={x} top={FOOT + 28 + place * ROW} />
      ))}
    </Chart>
  );
}

function Turn({ turn, x }: { turn: Tick; x: number }) {
  const side = x > (LEFT + RIGHT) / 2 ? "end" : "start";
  return (
    <g>
      <path {...MARKS.dashes} d={`M${x} ${TOP - 6}V${FOOT}`} />
      <text {...MARKS.text} x={x + (side === "end" ? -6 : 6)} y={TOP - 10} text-anchor={side}>
        {turn.name}
      </text>
    </g>
  );
}

interface EventsProps {
  row: EventRow;
  x: (at: number) => number;
  top: number;
}

function Events({ row, x, top }: EventsProps) {
  return (
    <g>
      <text {...MARKS.text} x={LEFT - 6} y={top + 8 + MIDDLE} text-anchor="end">
        {row.name}
      </text>
      <path {...MARKS.rule} d={`M${LEFT} ${top + 8}H${RIGHT}`} />
      <path {...MARKS.event} d={row.at.map((at) => `M${x(at)} ${top}v16`).join("")} />
    </g>
  );
}
