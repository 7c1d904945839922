import { expect, test } from "vitest";
import { drawCard } from "../../src/share/card/draw-card.tsx";
import { svgDocument } from "../../src/share/card/png.ts";
import { wrap } from "../../src/share/card/wrap.ts";
import { summarise } from "../../src/share/summary.ts";
import { at, sessionOf } from "../analysis/fixtures/session.ts";
import { INJECTIONS } from "./days.ts";

const STYLES = { weight: "lb-oz", length: "cm" } as const;

const day = (notes: readonly string[], water: string) =>
  summarise(
    sessionOf(
      [
        [10, { kind: "change", rig: INJECTIONS[0] ?? "" }],
        [20, { kind: "fish", species: INJECTIONS[1] ?? "", weightG: 900 }],
        ...notes.map((text) => [30, { kind: "note", text }] as const),
      ],
      { plan: { water, peg: "17" } },
    ),
    at(60),
  );

const draw = (
  allowed: { water: boolean; peg: boolean; notes: boolean },
  notes: readonly string[],
  water = "Osier Lake",
) =>
  drawCard({
    summary: day(notes, water),
    styles: STYLES,
    allowed,
    chart: (
      <svg viewBox="0 0 360 180" role="img" aria-label="A chart">
        <path d="M0 0" />
      </svg>
    ),
  });

test("no place and no note is on it unless it is allowed", () => {
  const none = draw({ water: false, peg: false, notes: false }, ["by the reeds"]).textContent;
  expect(none).not.toMatch(/Osier|17|reeds/);
  expect(none).toContain("2 lb");
  const all = draw({ water: true, peg: true, notes: true }, ["by the reeds"]).textContent;
  expect(all).toMatch(/Osier Lake, peg 17.*by the reeds/);
});

test("the chart stands in it at its own shape", () => {
  const card = draw({ water: false, peg: false, notes: false }, []);
  const place = card.querySelector(".card-chart");
  expect(Number(place?.getAttribute("height"))).toBe(Number(place?.getAttribute("width")) / 2);
  expect(place?.querySelector("path")).not.toBeNull();
});

test("whatever is noted or named stands in it as text alone", () => {
  const card = draw({ water: true, peg: true, notes: true }, INJECTIONS);
  expect(card.querySelectorAll("script, img, foreignObject, a, image")).toHaveLength(0);
  const attributes = [...card.querySelectorAll("*")].flatMap((one) => one.getAttributeNames());
  expect(attributes.filter((name) => name.startsWith("on") || name.includes("href"))).toEqual([]);
  expect(card.textContent).toContain("<script>");
});

test("what no document may hold is in none, wherever it was noted or named", () => {
  const water = "Osier\u0001 Lake\ud800";
  const card = draw({ water: true, peg: true, notes: true }, ["\u0000\u0007 fine \ufffe"], water);
  expect(card.getAttribute("aria-label")).toContain(water);
  const written = svgDocument(card);
  expect(written).toContain("Osier Lake");
  expect(written).not.toMatch(/(?![\t\n\r])[\p{Cc}\p{Cs}\ufffe]/u);
});

test("however much was noted, it stays a picture", () => {
  const heightOf = (notes: readonly string[]) =>
    Number(draw({ water: true, peg: true, notes: true }, notes).getAttribute("height"));
  expect(heightOf(Array(500).fill("topping"))).toBeLessThan(
    heightOf(Array(5).fill("topping")) + 10,
  );
  expect(heightOf(["x".repeat(2000)])).toBeLessThan(heightOf(["x".repeat(401)]) + 10);
});

test("text is wrapped at its words, and a word too wide for a line is cut", () => {
  const width = (text: string) => text.length;
  expect(wrap("one two three", 7, width)).toEqual(["one two", "three"]);
  expect(wrap("abcdefghij kl", 4, width)).toEqual(["abcd", "efgh", "ij", "kl"]);
  expect(wrap("", 4, width)).toEqual([""]);
});
