import { scaleLinear } from "d3-scale";
import { area, curveStepAfter, line } from "d3-shape";
import { useId } from "preact/hooks";
import { Foot, Hatch, Levels, type Tick } from "./axes.tsx";
import { Chart } from "./chart.tsx";
import { MARKS, WIDTH } from "./marks.ts";

/** The share that had ended, from a wait on, with its limits; 0 to 1. */
export interface Ended {
  after: number;
  share: number;
  lower: number;
  upper: number;
}

export interface WaitCurve {
  name: string;
  beside: string;
  /** In order of time, from the first end on. */
  steps: readonly Ended[];
  /** How long it was watched; no step lies beyond. */
  until: number;
}

interface WaitsProps {
  curves: readonly WaitCurve[];
  /** Along the foot; the last is the end of the scale. */
  ticks: readonly Tick[];
  /** Between 0 and 1, ruled across each curve. */
  shares: readonly Tick[];
  title: string;
}

const LEFT = 62;
const RIGHT = WIDTH - 14;
const HEAD = 32;
const TALL = 72;
const GAP = 12;

/** How long it took, curve by curve on one scale: the share that had ended rises with the wait. */
export function Waits({ curves, ticks, shares, title }: WaitsProps) {
  const x = scaleLinear([0, ticks.at(-1)?.at || 1], [LEFT, RIGHT]).clamp(true);
  const foot = curves.length * (HEAD + TALL + GAP) - GAP;
  return (
    <Chart height={foot + 26} title={title}>
      <Foot ticks={ticks} x={x} y={foot} />
      {curves.map((curve, place) => (
        <Curve
          key={curve.name}
          curve={curve}
          shares={shares}
          x={x}
          top={place * (HEAD + TALL + GAP)}
        />
      ))}
    </Chart>
  );
}

interface CurveProps {
  curve: WaitCurve;
  shares: readonly Tick[];
  x: (wait: number) => number;
  top: number;
}

function Curve({ curve, shares, x, top }: CurveProps) {
  const { name, beside, steps, until } = curve;
  const hatch = useId();
  const y = scaleLinear([0, 1], [top + HEAD + TALL, top + HEAD]);
  const none = { after: 0, share: 0, lower: 0, upper: 0 };
  const last = steps.at(-1) ?? none;
  const all = [none, ...steps, { ...last, after: Math.max(until, last.after) }];
  const rising = line<Ended>(
    ({ after }) => x(after),
    ({ share }) => y(share),
  ).curve(curveStepAfter);
  const limits = area<Ended>()
    .x(({ after }) => x(after))
    .y0(({ lower }) => y(lower))
    .y1(({ upper }) => y(upper))
    .curve(curveStepAfter);
  return (
    <g>
      <Hatch id={hatch} />
      <text {...MARKS.name} x={0} y={top + 15}>
        {name}
      </text>
      <text {...MARKS.text} x={RIGHT} y={top + 15} text-anchor="end">
        {beside}
      </text>
      <Levels ticks={shares} y={y} left={LEFT} right={RIGHT} />
      <path fill={`url(#${hatch})`} d={limits(all) ?? ""} />
      <path {...MARKS.line} d={rising(all) ?? ""} />
    </g>
  );
}
