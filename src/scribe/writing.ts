/** From the statements of one utterance to what is written of them. */
import type { Statement, StatementOf } from "../../grammar/statement.ts";
import { type EventBody, type Heard, isEntryStatement, type Verdict } from "../log/event.ts";
import { newId } from "../log/identity.ts";
import { preview } from "../log/preview.ts";
import type { Session } from "../log/session.ts";
import { type Note, note } from "./notebook.ts";
import { amending, withdrawing } from "./spoken-corrections.ts";

export interface Said {
  statements: readonly Statement[];
  verdict: Verdict;
  heard: Heard;
  /** When it was spoken, milliseconds since the epoch; absent for now. */
  at?: number;
  /** The id of a doubtful entry that was said to be right. */
  settles?: string;
}

export interface Writing {
  notes: Note[];
  /** Corrections of what is not there. */
  missed: (StatementOf<"amend"> | StatementOf<"withdraw">)[];
}

/**
 * Notes in the order of the statements, in one group. A correction means what came before it in the
 * same utterance if it fits that, else what the session has; questions are not written. Where
 * nothing is left to write, what was heard is kept as a heard line.
 * @param inQuestion the id of the entry that the angler has before him: it is what "that" means
 */
export function writingOf(
  { statements, verdict, heard, at, settles }: Said,
  session: Session,
  inQuestion?: string,
): Writing {
  const group = newId();
  const beside = { heard, ...(at !== undefined && { at }) };
  const notes: Note[] = [];
  const missed: Writing["missed"] = [];
  const write = (body: EventBody) => note(body, verdict, { ...beside, group });
  if (settles !== undefined) notes.push(write({ kind: "settle", target: settles }));
  for (const statement of statements) {
    if (isEntryStatement(statement)) notes.push(write({ kind: "entry", statement }));
    if (statement.kind === "amend" || statement.kind === "withdraw") {
      const asWritten = {
        session: notes.length > 0 ? preview(session, notes) : session,
        inQuestion,
      };
      const correction =
        statement.kind === "amend"
          ? amending(statement, asWritten, write)
          : withdrawing(statement, asWritten, notes, write);
      if (correction) notes.push(...correction);
      else missed.push(statement);
    }
  }
  const isAnswered = statements.some(isForAnswerOnly) && missed.length === 0;
  if (notes.length === 0 && !isAnswered)
    return { notes: [note({ kind: "heard" }, "ignore", beside)], missed };
  return { notes, missed };
}

/** Questions, and how much to say: answered and not written. */
export const isForAnswerOnly = ({ kind }: Statement): boolean =>
  kind === "ask" || kind === "talkback";
