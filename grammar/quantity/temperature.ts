/** Temperatures as said, in degrees Celsius: "eleven degrees", "minus two", "52 fahrenheit". */
import { readNumber } from "./number.ts";

export interface Temperature {
  value: number;
  next: number;
}

const DEGREES = new Set(["degrees", "degree", "deg"]);
const CELSIUS = new Set(["celsius", "centigrade", "c"]);
const FAHRENHEIT = new Set(["fahrenheit", "f"]);

/** The temperature that starts at word `i`; it must be told by a unit or a minus. */
export function readTemperature(words: readonly string[], i: number): Temperature | undefined {
  const minus = words[i] === "minus";
  const number = readNumber(words, minus ? i + 1 : i);
  if (!number || number.fraction) return undefined;
  const degrees = DEGREES.has(words[number.next] ?? "");
  const scaleAt = degrees ? number.next + 1 : number.next;
  const scale = words[scaleAt] ?? "";
  const signed = minus ? -number.value : number.value;
  if (FAHRENHEIT.has(scale)) return { value: ((signed - 32) * 5) / 9, next: scaleAt + 1 };
  if (CELSIUS.has(scale)) return { value: signed, next: scaleAt + 1 };
  return degrees || minus ? { value: signed, next: scaleAt } : undefined;
}
