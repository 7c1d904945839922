/** What the questions have in common. */
import type { Question } from "../statement.ts";
import { fixedPhrase, type Phrase } from "./phrase.ts";

/** A question, which states the same whatever its words. */
export const ask = (
  what: Question,
  patterns: readonly string[],
  examples: readonly string[],
): Phrase => fixedPhrase(`ask-${what}`, { kind: "ask", what }, patterns, examples);

/** With what a question of the day as a whole may end. */
export const SO_FAR =
  "so far | now | at the moment | up to now | altogether | in total | today | yet | in all | all together";

export const WHATS =
  "what's | what is | tell me | give me | what was | read me | how's | how is | say | read out | read me back | read back | give us | read | what've";
