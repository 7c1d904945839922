/** Temperatures as said, in degrees Celsius: "eleven degrees", "minus two", "52 fahrenheit". */
import { readNumber } from "./number.ts";

export interface Temperature {
  value: number;
  next: number;
}

const DEGREES = new Set(["degrees", "degree", "deg"]);
const CELSIUS = new Set(["celsius", "centigrade", "c"]);
const BELOW = new Set(["zero", "freezing", "nought"]);
const FAHRENHEIT = new Set(["fahrenheit", "f"]);

/** The temperature that starts at word `i`; it must be told by a unit or a minus. */
export function readTemperature(words: readonly string[], i: number): Temperature | undefined {
  const minus = words[i] === "minus";
  const number = readNumber(words, minus ? i + 1 : i);
  if (!number) return undefined;
  const unitAt = number.fraction && words[number.next] === "a" ? number.next + 1 : number.next;
  const degrees = DEGREES.has(words[unitAt] ?? "");
  if (number.fraction && !degrees) return undefined;
  const below = degrees && words[unitAt + 1] === "below";
  if (below && BELOW.has(words[unitAt + 2] ?? "")) {
    return { value: -number.value, next: unitAt + 3 };
  }
  const scaleAt = degrees ? unitAt + 1 : unitAt;
  const scale = words[scaleAt] ?? "";
  const signed = minus ? -number.value : number.value;
  if (FAHRENHEIT.has(scale)) return { value: ((signed - 32) * 5) / 9, next: scaleAt + 1 };
  if (CELSIUS.has(scale)) return { value: signed, next: scaleAt + 1 };
  return degrees || minus ? { value: signed, next: scaleAt } : undefined;
}
