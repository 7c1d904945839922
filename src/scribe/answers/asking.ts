import type { Question } from "../../../grammar/statement.ts";
import type { Running } from "../../analysis/running.ts";
import type { PastSession } from "../../analysis/seasons/past.ts";
import type { Bias } from "../../analysis/weights/bias.ts";
import type { Session } from "../../log/session.ts";
import { answerWords } from "../../words/answers.ts";
import type { Units } from "./words.ts";

/** A question with an answer of its own, and not about another's. */
export type OwnQuestion = Exclude<Question, "sure" | "again">;

export const hasOwnAnswer = (what: Question): what is OwnQuestion =>
  what !== "sure" && what !== "again";

/** What a question is answered from. */
export interface Asking {
  session: Session;
  /** The session's own sums. */
  sums: Running;
  /** What earlier sessions left. */
  past: readonly PastSession[];
  /** How the angler's words compare with the scales. */
  bias: Bias;
  /** Milliseconds since the epoch. */
  now: number;
  units: Units;
  /** The last one asked before it. */
  before?: OwnQuestion;
}

/** An answer for an angler who wants it short, and for one who wants all of it. */
export interface Words {
  short: string;
  full: string;
  /** How sure it is; absent where it is a plain count. */
  sure?: string;
}

export const same = (text: string): Words => ({ short: text, full: text });

export const NOT_STARTED: Words = same(answerWords.notStarted);

/** The angler's bias after all nets that were weighed, earlier and today. */
export const biasOf = ({ sums, past }: Pick<Asking, "sums" | "past">): Bias =>
  sums.biasAfter(past.flatMap(({ nets }) => nets));
