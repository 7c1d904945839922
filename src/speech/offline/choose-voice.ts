/** What suits a voice best, from what it was heard to say: its manner, and the limits of fit. */
import { isSameManner, limitsOf, type Manner, USUAL_VOICE, type VoiceChoice } from "./suit.ts";

/** One phrase as it was heard in one manner. */
export interface Take {
  /** Whether it stated what was on the screen. */
  isRight: boolean;
  fit: number;
}

export interface Hearing extends Manner {
  /** In the order of the phrases. */
  phrases: readonly Take[];
  /** Fits of talk that a phrase was made of; talk of which none could be made is left out. */
  talk: readonly number[];
  /** All that was talk, one by one. */
  talks: number;
}

/** Fewer more phrases right than this are chance. */
const MORE_RIGHT = 1;
/** So many units of fit the limits may move either way: twenty phrases can't tell more. */
const REACH = 4;
const STEP = 0.5;
/** One piece of talk taken is as bad as so many phrases missed. */
const TALK_WEIGHT = 2;
/** Keeps the limits where they are while nothing speaks for another. */
const PULL = 0.01;

/** Another manner than the usual must hear more phrases right; of equals, the first is taken. */
export function chooseVoice(hearings: readonly Hearing[]): VoiceChoice {
  const usual = hearings.find((hearing) => isSameManner(hearing, USUAL_VOICE));
  const [best] = [...hearings].sort((a, b) => countRight(b) - countRight(a));
  if (!usual || !best) return USUAL_VOICE;
  const chosen = countRight(best) >= countRight(usual) + MORE_RIGHT ? best : usual;
  return { accent: chosen.accent, warp: chosen.warp, shift: chooseShift(chosen) };
}

const countRight = ({ phrases }: Hearing): number =>
  phrases.filter(({ isRight }) => isRight).length;

/** Both limits move alike, to where phrases missed and talk taken together cost least. */
function chooseShift({ phrases, talk, talks }: Hearing): number {
  const right = phrases.filter(({ isRight }) => isRight);
  const cost = (shift: number): number => {
    const limit = limitsOf({ shift }).refuseBelow;
    const missed = right.filter(({ fit }) => fit < limit).length / Math.max(1, right.length);
    const taken = talk.filter((fit) => fit >= limit).length / Math.max(1, talks);
    return missed + TALK_WEIGHT * taken + PULL * Math.abs(shift);
  };
  const shifts = Array.from({ length: 1 + (2 * REACH) / STEP }, (_, i) => i * STEP - REACH);
  return shifts.reduce((best, one) => (cost(one) < cost(best) ? one : best), 0);
}

/** How many phrases a choice takes rightly. */
export const takenRight = ({ phrases }: Hearing, choice: VoiceChoice): number =>
  phrases.filter(({ isRight, fit }) => isRight && fit >= limitsOf(choice).refuseBelow).length;

/** How many pieces of talk it takes for phrases. */
export const talkTaken = ({ talk }: Hearing, choice: VoiceChoice): number =>
  talk.filter((fit) => fit >= limitsOf(choice).refuseBelow).length;
