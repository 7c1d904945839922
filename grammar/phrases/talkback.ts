/** How much the phone is to say. */
import type { StatementOf } from "../statement.ts";
import { fixedPhrase, type Phrase } from "./phrase.ts";

const talkback = (
  level: StatementOf<"talkback">["level"],
  pattern: string,
  example: string,
): Phrase => fixedPhrase(`talkback-${level}`, { kind: "talkback", level }, [pattern], [example]);

export const tonesOnly = talkback(
  "tones",
  "[switch to | change to] (tones only | only tones | tones | beeps only | only beeps | stop talking to me | no talking back | no speaking | stop reading it back | no answers)",
  "tones only",
);

export const shortAnswers = talkback(
  "short",
  "[switch to | change to] (short answers | answer short | keep answers short | keep it short | answers short | brief answers | short talkback | say less)",
  "short answers",
);

export const fullAnswers = talkback(
  "full",
  "[switch to | change to] (full answers | answer in full | long answers | answers in full | full talkback | say more | tell me everything | read it all back)",
  "full answers",
);
