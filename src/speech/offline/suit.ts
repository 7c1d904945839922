/** How the ears inside the app are suited to one angler. */
import type { Config } from "soundswallower";
import type { Accent } from "./accents.ts";
import { type FitLimits, USUAL_LIMITS } from "./fit.ts";
import type { Names } from "./places.ts";

/** In what way a voice is heard. */
export interface Manner {
  accent: Accent;
  /** By what the tones of a voice are scaled: 1 not at all, below 1 for deep voices, above for high ones. */
  warp: number;
}

/**
 * The nearest to a voice as it is come first. Voices lowered or raised by a fifth to a quarter were
 * heard best at one of the outermost: see DEVELOPERS.md.
 */
export const WARPS = [1, 0.9, 1.12, 0.8, 1.25] as const;

/** What a drill chooses for a voice. */
export interface VoiceChoice extends Manner {
  /** Added to the usual limits of fit; below 0 more is believed. */
  shift: number;
}

/**
 * Ways of the south of England beside the dictionary's American ones: no voice was heard worse with
 * them, and a British one is refused less often. See DEVELOPERS.md.
 */
export const USUAL_VOICE: VoiceChoice = { accent: "southern", warp: WARPS[0], shift: 0 };

/** Everything is told, even what fits no phrase: for whoever judges by himself. */
export const ALL_TOLD: VoiceChoice = { ...USUAL_VOICE, shift: -Infinity };

export const isSameManner = (one: Manner, other: Manner): boolean =>
  one.accent === other.accent && one.warp === other.warp;

/** What the decoders are told of a warp. */
export const warped = ({ warp }: Pick<Manner, "warp">): Config =>
  warp === 1 ? {} : { warp_params: String(warp) };

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
