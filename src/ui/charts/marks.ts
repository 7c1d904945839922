/**
 * How what is drawn looks. Each mark carries its looks as attributes, so that a chart stands by
 * itself as a file or on paper; on the screen `charts.css` gives the classes the theme's colours.
 */
const INK = "#0b2627";
const EDGE = "#0b3b3c";
const TICKET = "#fffefa";
const FONT = '"Trebuchet MS", "Segoe UI", system-ui, sans-serif';

export const MARKS = {
  text: { class: "chart-text", fill: INK, "font-size": 13, "font-family": FONT },
  name: {
    class: "chart-text",
    fill: INK,
    "font-size": 14,
    "font-weight": 700,
    "font-family": FONT,
  },
  rule: { class: "chart-rule", stroke: EDGE, "stroke-width": 0.6, fill: "none" },
  line: {
    class: "chart-line",
    stroke: INK,
    "stroke-width": 3,
    "stroke-linejoin": "round",
    fill: "none",
  },
  fine: { class: "chart-line", stroke: INK, "stroke-width": 1.5, fill: "none" },
  dashes: {
    class: "chart-line",
    stroke: INK,
    "stroke-width": 2,
    "stroke-dasharray": "6 4",
    fill: "none",
  },
  hatch: { class: "chart-line", stroke: INK, "stroke-width": 1, fill: "none" },
  full: { class: "chart-full", fill: INK, stroke: TICKET, "stroke-width": 1 },
  open: { class: "chart-open", fill: TICKET, stroke: INK, "stroke-width": 2 },
  event: { class: "chart-line", stroke: INK, "stroke-width": 2, fill: "none" },
  rest: { class: "chart-rest", fill: "#f2b92e", "fill-opacity": 0.35 },
} as const;

/** A drawing's width in its own units: it scales with whatever it is put into. */
export const WIDTH = 360;
/** Text sits on its line; this brings its middle there. */
export const MIDDLE = 4.5;
