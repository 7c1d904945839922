import { scaleLinear } from "d3-scale";
import { Foot, Rungs, type Tick } from "./axes.tsx";
import { Chart } from "./chart.tsx";
import { MARKS, WIDTH } from "./marks.ts";

/** One thing told in two ways. */
export interface Pair {
  name: string;
  beside: string;
  open: number;
  full: number;
}

interface PairsProps {
  pairs: readonly Pair[];
  /** What the open mark stands for, and the full one. */
  openName: string;
  fullName: string;
  ticks: readonly Tick[];
  title: string;
}

const LEFT = 14;
const RIGHT = WIDTH - 14;
const TOP = 30;
const ROW = 42;

/** Two values for each row on one scale: an open circle and a full diamond. */
export function Pairs({ pairs, openName, fullName, ticks, title }: PairsProps) {
  const x = scaleLinear([0, ticks.at(-1)?.at || 1], [LEFT, RIGHT]).clamp(true);
  const foot = TOP + pairs.length * ROW;
  return (
    <Chart height={foot + 24} title={title}>
      <circle {...MARKS.open} cx={LEFT + 6} cy={12} r={6} />
      <text {...MARKS.text} x={LEFT + 18} y={17}>
        {openName}
      </text>
      <path {...MARKS.full} d={diamond(WIDTH / 2, 12)} />
      <text {...MARKS.text} x={WIDTH / 2 + 14} y={17}>
        {fullName}
      </text>
      <Foot ticks={ticks} x={x} y={foot} />
      {pairs.map(({ name, beside, open, full }, place) => {
        const top = TOP + place * ROW;
        return (
          <g key={name}>
            <text {...MARKS.name} x={LEFT} y={top + 15}>
              {name}
            </text>
            <text {...MARKS.text} x={RIGHT} y={top + 15} text-anchor="end">
              {beside}
            </text>
            <Rungs ticks={ticks} x={x} y={top + 28} />
            <path {...MARKS.fine} d={`M${x(open)} ${top + 28}H${x(full)}`} />
            <circle {...MARKS.open} cx={x(open)} cy={top + 28} r={6} />
            <path {...MARKS.full} d={diamond(x(full), top + 28)} />
          </g>
        );
      })}
    </Chart>
  );
}

const diamond = (x: number, y: number): string => `M${x - 8} ${y}l8 -8l8 8l-8 8z`;
