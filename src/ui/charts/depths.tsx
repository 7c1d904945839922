import { scaleLinear, scaleSqrt } from "d3-scale";
import { line } from "d3-shape";
import { Foot, Levels, type Tick } from "./axes.tsx";
import { Chart } from "./chart.tsx";
import { MARKS, MIDDLE, WIDTH } from "./marks.ts";

/** Something that happened at a depth. */
export interface Caught {
  at: number;
  depth: number;
  /** What its mark's area follows; 0 where nothing is known of it. */
  size: number;
}

/** A depth that was kept for a while. */
export interface Kept {
  from: number;
  to: number;
  depth: number;
}

interface DepthsProps {
  from: number;
  to: number;
  caught: readonly Caught[];
  lost: readonly Caught[];
  kept: readonly Kept[];
  /** The bottom, where it is known. */
  bottom?: Tick;
  /** From the surface down; the last is the foot of the picture. */
  levels: readonly Tick[];
  hours: readonly Tick[];
  title: string;
}

const LEFT = 62;
const RIGHT = WIDTH - 10;
const TOP = 14;
const FOOT = 204;
/** Room beneath for the bottom's name. */
const BED = 16;
const SMALLEST = 3;
const LARGEST = 8;

/** What was caught at what depth and when; the surface is above. */
export function Depths(props: DepthsProps) {
  const { from, to, caught, lost, kept, bottom, levels, hours, title } = props;
  const x = scaleLinear([from, Math.max(to, from + 1)], [LEFT, RIGHT]);
  const y = scaleLinear([0, levels.at(-1)?.at || 1], [TOP, FOOT]).clamp(true);
  const foot = bottom ? FOOT + BED : FOOT;
  const sizes = caught.map(({ size }) => size);
  const radius = scaleSqrt([0, Math.max(1, ...sizes)], [SMALLEST, LARGEST]);
  return (
    <Chart height={foot + 26} title={title}>
      <Levels ticks={levels} y={y} left={LEFT} right={RIGHT} />
      {bottom && (
        <g>
          <path {...MARKS.dashes} d={`M${LEFT} ${y(bottom.at)}H${RIGHT}`} />
          <text {...MARKS.text} x={RIGHT} y={y(bottom.at) + 15} text-anchor="end">
            {bottom.name}
          </text>
        </g>
      )}
      {kept.map((one) => (
        <path
          key={one.from}
          {...MARKS.fine}
          d={
            line()([
              [x(one.from), y(one.depth)],
              [x(one.to), y(one.depth)],
            ]) ?? ""
          }
        />
      ))}
      {caught.map(({ at, depth, size }, place) => (
        <circle key={place} {...MARKS.full} cx={x(at)} cy={y(depth)} r={radius(size)} />
      ))}
      {lost.map(({ at, depth }, place) => (
        <g key={place}>
          <circle {...MARKS.open} cx={x(at)} cy={y(depth)} r={6.5} />
          <path {...MARKS.event} d={cross(x(at), y(depth), MIDDLE)} />
        </g>
      ))}
      <Foot ticks={hours} x={x} y={foot} />
    </Chart>
  );
}

const cross = (x: number, y: number, reach: number): string =>
  `M${x - reach} ${y - reach}l${2 * reach} ${2 * reach}m0 ${-2 * reach}l${-2 * reach} ${2 * reach}`;
