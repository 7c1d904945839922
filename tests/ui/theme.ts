/** The theme's colours as they stand in its style sheet, and their contrast. */

export type Theme = ReadonlyMap<string, string>;

/** The colours of the light theme, and those of the dark one where it differs. */
export function readThemes(css: string): { light: Theme; dark: Theme } {
  const dark = /@media \(prefers-color-scheme: dark\) \{([\s\S]*?\n)\}/.exec(css);
  if (!dark) throw new Error("The style sheet has no dark theme.");
  const light = coloursIn(css.replace(dark[0], ""));
  return { light, dark: new Map([...light, ...coloursIn(dark[1] ?? "")]) };
}

const coloursIn = (css: string): Theme =>
  new Map(
    [...css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name = "", hex = ""]) => [
      name,
      hex,
    ]),
  );

/** Every ink with the ground it is meant for: `--on-paper-soft` is for `--paper`. */
export function pairsOf(theme: Theme): [ink: string, ground: string][] {
  return [...theme.keys()]
    .filter((name) => name.startsWith("on-"))
    .map((ink) => [ink, ink.replace(/^on-([a-z]+).*$/, "$1")]);
}

/** Contrast ratio of two colours, 1 to 21. Source: WCAG 2.2, "contrast ratio". */
export function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/** Source: WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
