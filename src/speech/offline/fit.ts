/**
 * How well a phrase fits the sound. The measure is the difference between the decoder's score for
 * the phrase and that for loose sounds, per frame of 10 ms: about 0 for phrases spoken clearly, and
 * far below for other talk. Found by measurement on synthetic voices: see DEVELOPERS.md.
 */
import type { PhraseDecoder } from "./decoder.ts";

/** The decoder bound to phrases, and the one it is held against. */
export interface Decoders {
  phrases: PhraseDecoder;
  loop: PhraseDecoder;
}

export interface Fitted {
  /** Empty where no phrase fits at all. */
  text: string;
  fit: number;
}

/** Talk is mostly taken for several short phrases in a row; such a row must fit better than one does. */
const ROW_COST = 5;

/**
 * Given back of what the grammar's chances cost a phrase, in the decoder's units (about ten for a
 * factor of e): the cost comes once, and shared out over its frames would weigh most on the shortest
 * phrases. Given back whole (some 400), single words of talk would be believed as readily.
 */
const PHRASE_COST = 200;

/** Ends the utterance that both decoders were given. @param frames its length, in frames of 10 ms */
export function finishBoth({ phrases, loop }: Decoders, frames: number): Fitted {
  const { text, score } = phrases.finish();
  const lead = (score - loop.finish().score + PHRASE_COST) / frames;
  const isRow = text !== "" && phrases.sentences() > 1;
  return { text, fit: isRow ? lead - ROW_COST : lead };
}

export interface FitLimits {
  /** Below this it is taken for talk. */
  refuseBelow: number;
  /** Below this, though no talk, it is to be looked at. */
  sureFrom: number;
}

export const USUAL_LIMITS: FitLimits = { refuseBelow: -11.5, sureFrom: -8.5 };

/** 0 to 1: one half at the limit of what is sure, and rising over a few units of fit. */
export const confidenceOf = (fit: number, { sureFrom }: FitLimits): number =>
  1 / (1 + Math.exp((sureFrom - fit) / SPREAD));

const SPREAD = 3;
