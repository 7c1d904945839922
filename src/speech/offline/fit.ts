/**
 * How well a phrase fits the sound. The measure is the difference between the decoder's score for
 * the phrase and that for loose sounds, per frame of 10 ms: about 0 for phrases spoken clearly, and
 * far below for other talk. Found by measurement on synthetic voices: see DEVELOPERS.md.
 */

export interface FitLimits {
  /** Below this it is taken for talk. */
  refuseBelow: number;
  /** Below this, though no talk, it is to be looked at. */
  sureFrom: number;
}

export const USUAL_LIMITS: FitLimits = { refuseBelow: -11, sureFrom: -8 };

/** 0 to 1: one half at the limit of what is sure, and rising over a few units of fit. */
export const confidenceOf = (fit: number, { sureFrom }: FitLimits): number =>
  1 / (1 + Math.exp((sureFrom - fit) / SPREAD));

const SPREAD = 3;
