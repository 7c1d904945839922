/** A day as a picture: what grew over time, and beneath it what happened when. */

export interface TimelineRow {
  name: string;
  /** Milliseconds since the epoch. */
  at: readonly number[];
}

interface TimelineProps {
  from: number;
  to: number;
  /** What had been reached from each moment on, in order of time. */
  climb: readonly { at: number; value: number }[];
  /** Values to rule a line at, and their names. */
  levels: readonly { value: number; name: string }[];
  /** Moments to mark along the foot, and their names. */
  hours: readonly { at: number; name: string }[];
  breaks: readonly { from: number; to: number }[];
  rows: readonly TimelineRow[];
  /** What is to be seen, in a sentence. */
  title: string;
}

const WIDTH = 360;
const LEFT = 68;
const RIGHT = 348;
const TOP = 16;
const FOOT = 170;
const ROW = 24;

export function Timeline({ from, to, climb, levels, hours, breaks, rows, title }: TimelineProps) {
  const top = levels.at(-1)?.value || 1;
  const x = (at: number) => LEFT + ((RIGHT - LEFT) * (at - from)) / Math.max(1, to - from);
  const y = (value: number) => FOOT - ((FOOT - TOP) * value) / top;
  const height = FOOT + 22 + rows.length * ROW;
  const rowY = (place: number) => FOOT + 26 + place * ROW;
  return (
    <svg class="timeline" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={title}>
      {breaks.map((one) => (
        <rect
          key={one.from}
          class="timeline-break"
          x={x(one.from)}
          y={TOP}
          width={x(one.to) - x(one.from)}
          height={height - TOP - 6}
        />
      ))}
      {levels.map(({ value, name }) => (
        <g key={name}>
          <path class="timeline-level" d={`M${LEFT} ${y(value)}H${RIGHT}`} />
          <text class="timeline-text" x={LEFT - 6} y={y(value) + 4} text-anchor="end">
            {name}
          </text>
        </g>
      ))}
      <path class="timeline-climb" d={stairs(climb, x, y, to)} />
      {hours.map(({ at, name }) => (
        <g key={name}>
          <path class="timeline-hour" d={`M${x(at)} ${FOOT}v5`} />
          <text class="timeline-text" x={x(at)} y={FOOT + 17} text-anchor="middle">
            {name}
          </text>
        </g>
      ))}
      {rows.map(({ name, at }, place) => (
        <g key={name}>
          <text class="timeline-text" x={LEFT - 6} y={rowY(place) + 12} text-anchor="end">
            {name}
          </text>
          <path class="timeline-row" d={`M${LEFT} ${rowY(place) + 8}H${RIGHT}`} />
          <path
            class="timeline-mark"
            d={at.map((one) => `M${x(one)} ${rowY(place)}v16`).join("")}
          />
        </g>
      ))}
    </svg>
  );
}

/** Level until something is added, then straight up. */
function stairs(
  climb: TimelineProps["climb"],
  x: (at: number) => number,
  y: (value: number) => number,
  to: number,
): string {
  const steps = climb.map(({ at, value }) => `H${x(at)}V${y(value)}`);
  return `M${LEFT} ${y(0)}${steps.join("")}H${x(to)}`;
}
