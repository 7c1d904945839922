/** Length and weight of a fish: W = a L^b, W in grams, L in centimetres. */

/** SL to the tail base, FL to the fork, TL to the tail's end. */
export type LengthType = "SL" | "FL" | "TL";

export interface Relation {
  a: number;
  b: number;
  lengthType: LengthType;
  /** Standard deviation of ln W about the relation: how much fish of one length differ. */
  spread: number;
}

const MM_PER_CM = 10;

/** Expected grams of a fish of `lengthMm` (> 0), measured as the relation's length type says. */
export const weightAt = (lengthMm: number, { a, b }: Relation): number =>
  a * (lengthMm / MM_PER_CM) ** b;

/** Millimetres of a fish of `weightG` (> 0). */
export const lengthAt = (weightG: number, { a, b }: Relation): number =>
  MM_PER_CM * (weightG / a) ** (1 / b);

/** Fulton's condition factor K = 100 W / L³, from grams and millimetres (both > 0). */
export const condition = (weightG: number, lengthMm: number): number =>
  (100 * weightG) / (lengthMm / MM_PER_CM) ** 3;

/** The mean condition factor at a length, 100 a L^(b−3). Source: Froese 2006, J. Appl. Ichthyol. 22:241. */
export const conditionAt = (lengthMm: number, relation: Relation): number =>
  condition(weightAt(lengthMm, relation), lengthMm);

/** a and b of a standard-weight equation log10 W = intercept + slope · log10 L with L in millimetres. */
export const fromStandardWeight = (
  intercept: number,
  slope: number,
): Pick<Relation, "a" | "b"> => ({ a: 10 ** (intercept + slope), b: slope });
