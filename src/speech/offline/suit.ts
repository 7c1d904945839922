/** How the ears inside the app are suited to one angler. */
import type { Accent } from "./accents.ts";
import { type FitLimits, USUAL_LIMITS } from "./fit.ts";
import type { Names } from "./places.ts";

/** What a drill chooses for a voice. */
export interface VoiceChoice {
  accent: Accent;
  /** Added to the usual limits of fit; below 0 more is believed. */
  shift: number;
}

export const USUAL_VOICE: VoiceChoice = { accent: "dictionary", shift: 0 };

/** Everything is told, even what fits no phrase: for whoever judges by himself. */
export const ALL_TOLD: VoiceChoice = { accent: "dictionary", shift: -Infinity };

export interface Suit {
  /** Names of his own, by the place they take. */
  own: Names;
  voice: VoiceChoice;
  /** Each utterance brings its sound. */
  withSound: boolean;
}

export const limitsOf = ({ shift }: Pick<VoiceChoice, "shift">): FitLimits => ({
  refuseBelow: USUAL_LIMITS.refuseBelow + shift,
  sureFrom: USUAL_LIMITS.sureFrom + shift,
});

/** Whether what was heard is told at all. */
export const isTold = (text: string, fit: number, { refuseBelow }: FitLimits): boolean =>
  refuseBelow === -Infinity || (text !== "" && fit >= refuseBelow);
