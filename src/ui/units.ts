/** The units in which a number is typed, with the grams or millimetres in one. */
import { GRAMS_PER_POUND, type LengthStyle, MM_PER_INCH, type WeightStyle } from "./format.ts";

export interface TypedUnit {
  name: string;
  size: number;
}

export const weightUnit = (style: WeightStyle): TypedUnit =>
  style === "kg" ? { name: "kg", size: 1000 } : { name: "lb", size: GRAMS_PER_POUND };

/** For a fish, or the line above a float. */
export const lengthUnit = (style: LengthStyle): TypedUnit =>
  style === "in" ? { name: "in", size: MM_PER_INCH } : { name: "cm", size: 10 };

/** For the water's depth. */
export const depthUnit = (style: LengthStyle): TypedUnit =>
  style === "in" ? { name: "ft", size: 12 * MM_PER_INCH } : { name: "m", size: 1000 };
