import { render } from "@testing-library/preact";
import { expect, test } from "vitest";
import { Climb } from "../../src/ui/charts/climb.tsx";
import { Depths } from "../../src/ui/charts/depths.tsx";
import { Intervals } from "../../src/ui/charts/intervals.tsx";
import { MARKS } from "../../src/ui/charts/marks.ts";
import { Pairs } from "../../src/ui/charts/pairs.tsx";
import { Waits } from "../../src/ui/charts/waits.tsx";
import { contrast } from "./theme.ts";

const ticks = [0, 5, 10].map((at) => ({ at, name: `${at} units` }));

const CHARTS = {
  climb: (
    <Climb
      from={0}
      to={10}
      climb={[
        { at: 2, value: 4 },
        { at: 6, value: 8 },
      ]}
      band={[
        { at: 2, lower: 3, upper: 5 },
        { at: 6, lower: 6, upper: Number.POSITIVE_INFINITY },
      ]}
      levels={ticks}
      hours={ticks}
      breaks={[{ from: 3, to: 4 }]}
      rows={[{ name: "Fish", at: [2, 6] }]}
      turn={{ at: 8, name: "turn" }}
      title="A climb"
    />
  ),
  depths: (
    <Depths
      from={0}
      to={10}
      caught={[{ at: 2, depth: 3, size: 100 }]}
      lost={[{ at: 4, depth: 6, size: 0 }]}
      kept={[{ from: 0, to: 10, depth: 3 }]}
      bottom={{ at: 9, name: "bottom" }}
      levels={ticks}
      hours={ticks}
      title="Depths"
    />
  ),
  intervals: (
    <Intervals
      rows={[
        { name: "One", beside: "few", lower: 1, upper: Number.POSITIVE_INFINITY },
        { name: "Two", beside: "many", lower: 2, value: 4, upper: 6 },
      ]}
      ticks={ticks}
      title="Intervals"
    />
  ),
  waits: (
    <Waits
      curves={[
        {
          name: "One",
          beside: "two drops",
          steps: [{ after: 2, share: 0.5, lower: 0.1, upper: 0.9 }],
          until: 8,
        },
      ]}
      ticks={ticks}
      shares={[{ at: 0.5, name: "half" }]}
      title="Waits"
    />
  ),
  pairs: (
    <Pairs
      pairs={[{ name: "Net 1", beside: "4 and 5", open: 4, full: 5 }]}
      openName="spoken"
      fullName="scales"
      ticks={ticks}
      title="Pairs"
    />
  ),
};

const NAMES = Object.keys(CHARTS) as (keyof typeof CHARTS)[];

const drawn = (name: keyof typeof CHARTS) => {
  const svg = render(CHARTS[name]).container.querySelector("svg");
  if (!svg) throw new Error("Nothing was drawn.");
  return svg;
};

test.each(NAMES)("a chart of %s stands by itself: every mark carries its looks", (name) => {
  const svg = drawn(name);
  expect(svg.getAttribute("xmlns")).toBe("http://www.w3.org/2000/svg");
  expect(svg.querySelector("[style], style, script, image, foreignObject")).toBeNull();
  const marks = [...svg.querySelectorAll("path, circle, rect, text")];
  expect(marks.length).toBeGreaterThan(5);
  const bare = marks.filter((mark) => !mark.hasAttribute("fill"));
  expect(bare.map((mark) => mark.outerHTML)).toEqual([]);
  const unsized = [...svg.querySelectorAll("text")].filter(
    (text) => !text.hasAttribute("font-size"),
  );
  expect(unsized).toEqual([]);
});

test.each(NAMES)("a chart of %s has a name, and no number in it is none", (name) => {
  const svg = drawn(name);
  expect(svg.getAttribute("aria-label")).toBeTruthy();
  expect(svg.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
});

test("two charts on one page keep their patterns apart", () => {
  const { container } = render(
    <>
      {CHARTS.climb}
      {CHARTS.waits}
    </>,
  );
  const ids = [...container.querySelectorAll("[id]")].map(({ id }) => id);
  expect(ids.length).toBeGreaterThanOrEqual(2);
  expect(new Set(ids).size).toBe(ids.length);
  for (const area of container.querySelectorAll('[fill^="url"]')) {
    expect(ids).toContain(/url\(#(.*)\)/.exec(area.getAttribute("fill") ?? "")?.[1]);
  }
});

test("the surface is above: the deeper, the lower", () => {
  const svg = drawn("depths");
  const [fish, lost] = [...svg.querySelectorAll("circle")].map((mark) =>
    Number(mark.getAttribute("cy")),
  );
  expect(fish).toBeLessThan(lost ?? 0);
});

test("what goes beyond the scale ends in an arrow, what is not told has no circle and is broken", () => {
  const svg = drawn("intervals");
  expect(svg.querySelectorAll("circle")).toHaveLength(1);
  expect(svg.querySelectorAll("[stroke-dasharray]")).toHaveLength(1);
  const arrows = [...svg.querySelectorAll("path")].filter((path) =>
    /l7 6l-7 6$/.test(path.getAttribute("d") ?? ""),
  );
  expect(arrows).toHaveLength(1);
});

test("marks and words stand out 7:1 from the paper they are drawn on", () => {
  const paper = MARKS.open.fill;
  const inks = [MARKS.text.fill, MARKS.line.stroke, MARKS.full.fill, MARKS.open.stroke];
  for (const ink of inks) expect(contrast(ink, paper)).toBeGreaterThan(7);
});
