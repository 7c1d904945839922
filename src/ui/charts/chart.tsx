import type { ComponentChildren } from "preact";
import { WIDTH } from "./marks.ts";
import "./charts.css";

interface ChartProps {
  height: number;
  /** What is to be seen, in a sentence; the numbers stand in words beside the chart. */
  title: string;
  children: ComponentChildren;
}

/** A drawing that scales with its place. The size stands in it too, for where it is a file of its own. */
export function Chart({ height, title, children }: ChartProps) {
  return (
    <svg
      class="chart"
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={title}
    >
      {children}
    </svg>
  );
}
