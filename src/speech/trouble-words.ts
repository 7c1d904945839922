import { troubleSentences } from "../words/troubles.ts";
import type { TroubleReason } from "./recogniser.ts";

/** What is wrong, and what can be done about it; one sentence each. */
export interface TroubleWords {
  what: string;
  remedy: string;
}

const WORDS: Readonly<Record<TroubleReason, TroubleWords>> = troubleSentences;

export const troubleWords = (reason: TroubleReason): TroubleWords => WORDS[reason];
