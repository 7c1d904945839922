import { type ComponentChild, render } from "preact";
import type { Allowed } from "../allowed.ts";
import type { Summary } from "../summary.ts";
import type { Styles } from "../summary-text.ts";
import { Card, CHART_WIDTH, type TextWidth } from "./card.tsx";

interface CardContent {
  summary: Summary;
  styles: Styles;
  allowed: Allowed;
  /** An `svg` of its own with a `viewBox`; nothing where there is none to show. */
  chart?: ComponentChild;
}

/** The picture as a drawing that needs nothing from the page. */
export function drawCard({ chart, ...content }: CardContent): SVGSVGElement {
  const drawn = chart === undefined ? undefined : svgOf(chart);
  const [, , width = 1, height = 0] =
    drawn?.getAttribute("viewBox")?.split(/\s+/).map(Number) ?? [];
  const card = svgOf(
    <Card {...content} chartHeight={(CHART_WIDTH * height) / width} textWidth={textWidths()} />,
  );
  if (!card) throw new Error("The card drew nothing.");
  if (drawn) card.querySelector(".card-chart")?.append(drawn);
  return card;
}

/** By the canvas; where a browser has none, wide enough for any letter. */
function textWidths(): TextWidth {
  const context = document.createElement("canvas").getContext("2d");
  return (text, font) => {
    if (!context) return text.length * Number.parseFloat(font.split(" ")[1] ?? "0");
    context.font = font;
    return context.measureText(text).width;
  };
}

function svgOf(drawing: ComponentChild): SVGSVGElement | undefined {
  const host = document.createElement("div");
  render(drawing, host);
  return host.querySelector("svg") ?? undefined;
}
