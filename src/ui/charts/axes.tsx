/** Scales, ruled and named. */
import { MARKS, MIDDLE } from "./marks.ts";

/** A value on a scale, and what it is called there. */
export interface Tick {
  at: number;
  name: string;
}

interface LevelsProps {
  ticks: readonly Tick[];
  y: (value: number) => number;
  left: number;
  right: number;
}

/** Lines across, named on their left. */
export function Levels({ ticks, y, left, right }: LevelsProps) {
  return (
    <g>
      {ticks.map(({ at, name }) => (
        <g key={at}>
          <path {...MARKS.rule} d={`M${left} ${y(at)}H${right}`} />
          <text {...MARKS.text} x={left - 6} y={y(at) + MIDDLE} text-anchor="end">
            {name}
          </text>
        </g>
      ))}
    </g>
  );
}

interface FootProps {
  ticks: readonly Tick[];
  x: (value: number) => number;
  y: number;
}

/** Marks along the foot, named beneath. */
export function Foot({ ticks, x, y }: FootProps) {
  return (
    <g>
      {ticks.map(({ at, name }) => (
        <g key={at}>
          <path {...MARKS.rule} d={`M${x(at)} ${y}v5`} />
          <text {...MARKS.text} x={x(at)} y={y + 18} text-anchor="middle">
            {name}
          </text>
        </g>
      ))}
    </g>
  );
}

/** The scale's marks beside one row, clear of the words above it. */
export const Rungs = ({ ticks, x, y }: FootProps) => (
  <path {...MARKS.rule} d={ticks.map(({ at }) => `M${x(at)} ${y - 9}v20`).join("")} />
);

/** Fine stripes to fill an area with, told apart without colour. */
export function Hatch({ id }: { id: string }) {
  return (
    <pattern
      id={id}
      width="6"
      height="6"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <path {...MARKS.hatch} d="M0 0V6" />
    </pattern>
  );
}
