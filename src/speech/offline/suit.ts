/** How the ears inside the app are suited to one angler. */
import type { Accent } from "./accents.ts";
import { type FitLimits, USUAL_LIMITS } from "./fit.ts";
import type { Names } from "./places.ts";

/** What a drill chooses for a voice. */
export interface VoiceChoice {
  accent: Accent;
  limits: FitLimits;
}

export const USUAL_VOICE: VoiceChoice = { accent: "dictionary", limits: USUAL_LIMITS };

export interface Suit {
  /** Names of his own, by the place they take. */
  own: Names;
  voice: VoiceChoice;
  /** Each utterance brings its sound. */
  withSound: boolean;
}

/** Everything is told, even what fits no phrase: for whoever judges by himself. */
export const NO_LIMITS: FitLimits = { refuseBelow: -Infinity, sureFrom: USUAL_LIMITS.sureFrom };

/** Whether what was heard is told at all. */
export const isTold = (text: string, fit: number, { refuseBelow }: FitLimits): boolean =>
  refuseBelow === -Infinity || (text !== "" && fit >= refuseBelow);
