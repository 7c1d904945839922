/** The theme's colours as they stand in its style sheet, and their contrast. */

export type Theme = ReadonlyMap<string, string>;

/** The colours of the light theme and of the dark one, from `--x: light-dark(#…, #…)` or `--x: #…`. */
export function readThemes(css: string): { light: Theme; dark: Theme } {
  const found = [
    ...css.matchAll(/--([\w-]+):\s*(?:light-dark\()?(#[0-9a-f]{6})(?:, (#[0-9a-f]{6})\))?;/g),
  ];
  return {
    light: new Map(found.map(([, name = "", hex = ""]) => [name, hex])),
    dark: new Map(found.map(([, name = "", light = "", hex = light]) => [name, hex])),
  };
}

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
