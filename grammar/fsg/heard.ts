/**
 * How each phrase is heard by a recogniser that is bound to the grammar. A phrase's own patterns
 * are generous, because a reader loses nothing by them; ears that must weigh every sentence
 * against all others hear worse with each one more. So they are bound to the usual ways of saying
 * a phrase, each with a weight for how often it is said: common practice, no source. A test holds
 * both together: what is heard here is read as that phrase, and every example of a phrase can be
 * heard.
 */
import { HEARD_ASK } from "./heard/ask.ts";
import { HEARD_BANK } from "./heard/bank.ts";
import { HEARD_CHANGE } from "./heard/change.ts";
import { HEARD_FISH } from "./heard/fish.ts";
import { HEARD_SIZES } from "./heard/sizes.ts";
import { HEARD_TALK } from "./heard/talk.ts";

/** By phrase id or name of a shared rule, right-hand sides in JSGF notation. */
export const HEARD: Readonly<Record<string, string>> = {
  ...HEARD_FISH,
  ...HEARD_BANK,
  ...HEARD_CHANGE,
  ...HEARD_ASK,
  ...HEARD_TALK,
  ...HEARD_SIZES,
};
