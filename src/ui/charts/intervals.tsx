import { scaleLinear } from "d3-scale";
import { Foot, Rungs, type Tick } from "./axes.tsx";
import { Chart } from "./chart.tsx";
import { MARKS, WIDTH } from "./marks.ts";

export interface IntervalRow {
  name: string;
  /** What it rests on. */
  beside: string;
  /** Infinity where nothing bounds it. */
  lower: number;
  upper: number;
  /** Left out where there is too little to name one. */
  value?: number;
}

interface IntervalsProps {
  rows: readonly IntervalRow[];
  /** Along the foot; the last is the end of the scale. */
  ticks: readonly Tick[];
  title: string;
}

const LEFT = 14;
const RIGHT = WIDTH - 14;
const TOP = 6;
const ROW = 42;
/** From a row's top to its line. */
const DOWN = 28;

/** Values with their limits on one scale. What goes beyond the scale ends in an arrow. */
export function Intervals({ rows, ticks, title }: IntervalsProps) {
  const end = ticks.at(-1)?.at || 1;
  const x = scaleLinear([0, end], [LEFT, RIGHT]).clamp(true);
  const foot = TOP + rows.length * ROW;
  return (
    <Chart height={foot + 24} title={title}>
      <Foot ticks={ticks} x={x} y={foot} />
      {rows.map((row, place) => (
        <g key={row.name}>
          <Rungs ticks={ticks} x={x} y={TOP + place * ROW + DOWN} />
          <Row row={row} x={x} end={end} top={TOP + place * ROW} />
        </g>
      ))}
    </Chart>
  );
}

interface RowProps {
  row: IntervalRow;
  x: (value: number) => number;
  end: number;
  top: number;
}

function Row({ row, x, end, top }: RowProps) {
  const { name, beside, lower, upper, value } = row;
  const y = top + DOWN;
  const [from, to] = [x(lower), x(upper)];
  const tells = value !== undefined;
  return (
    <g>
      <text {...MARKS.name} x={LEFT} y={top + 15}>
        {name}
      </text>
      <text {...MARKS.text} x={RIGHT} y={top + 15} text-anchor="end">
        {beside}
      </text>
      <path {...(tells ? MARKS.line : MARKS.dashes)} d={`M${from} ${y}H${to}`} />
      <path {...MARKS.event} d={`M${from} ${y - 6}v12`} />
      <path
        {...MARKS.event}
        d={upper > end ? `M${to - 7} ${y - 6}l7 6l-7 6` : `M${to} ${y - 6}v12`}
      />
      {tells && <circle {...MARKS.open} cx={x(value)} cy={y} r={6} />}
    </g>
  );
}
