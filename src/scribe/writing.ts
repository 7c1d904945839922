/** From the statements of one utterance to what is written of them. */
import type { Statement, StatementOf } from "../../grammar/statement.ts";
import { type Heard, isEntryStatement, type LogEvent, type Verdict } from "../log/event.ts";
import { newId } from "../log/identity.ts";
import { comparePlaces } from "../log/order.ts";
import { resolveTarget } from "../log/resolve.ts";
import type { Entry, Session } from "../log/session.ts";
import { type Note, note } from "./notebook.ts";

export interface Said {
  statements: readonly Statement[];
  verdict: Verdict;
  heard: Heard;
  /** When it was spoken, milliseconds since the epoch; absent for now. */
  at?: number;
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
 */
export function writingOf({ statements, verdict, heard, at }: Said, session: Session): Writing {
  const group = newId();
  const beside = { heard, ...(at !== undefined && { at }) };
  const notes: Note[] = [];
  const missed: Writing["missed"] = [];
  const add = (body: Note["body"]) => notes.push(note(body, verdict, { ...beside, group }));
  for (const statement of statements) {
    if (isEntryStatement(statement)) add({ kind: "entry", statement });
    if (statement.kind === "amend") {
      const [target] = resolveTarget(withNotes(session, notes), statement.of, statement.set) ?? [];
      if (target === undefined) missed.push(statement);
      else add({ kind: "amend", target, set: statement.set });
    }
    if (statement.kind === "withdraw") {
      const targets = targetsOf(statement, session, notes);
      if (targets) add({ kind: "withdraw", targets: [...targets] });
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

/** "Last" is the last thing done: a spoken correction, if nothing has happened since, or an entry. */
function targetsOf(
  { of }: StatementOf<"withdraw">,
  session: Session,
  notes: readonly Note[],
): readonly string[] | undefined {
  if (of !== "last") return resolveTarget(withNotes(session, notes), of);
  const taken = new Set(
    notes.flatMap(({ body }) => (body.kind === "withdraw" ? body.targets : [])),
  );
  const before = notes.findLast(({ id, body }) => body.kind !== "withdraw" && !taken.has(id));
  if (before) return [before.id];
  const rest = { ...session, entries: session.entries.filter(({ id }) => !taken.has(id)) };
  const correction = lastSpokenCorrection(rest);
  return correction && !taken.has(correction.id) ? [correction.id] : resolveTarget(rest, of);
}

/**
 * The newest spoken change of an entry, unless an entry came after it. Taking something back is not
 * one of them: said twice, "scratch that" takes back two things.
 */
function lastSpokenCorrection({ corrections, entries }: Session): LogEvent | undefined {
  const last = corrections.findLast(
    ({ body, heard }) => body.kind === "amend" && heard !== undefined && heard.by !== "touched",
  );
  const newest = entries.at(-1)?.history[0];
  return last && newest && comparePlaces(newest, last) < 0 ? last : undefined;
}

/** The session as if the notes so far were in it, as far as a correction needs to know. */
function withNotes(session: Session, notes: readonly Note[]): Session {
  let number = session.count + 1;
  const entries = notes.flatMap(({ id, body }): Entry[] => {
    if (body.kind !== "entry") return [];
    const { statement } = body;
    const fishNumber = statement.kind === "fish" ? { fishNumber: number } : {};
    if (statement.kind === "fish") number += statement.count ?? 1;
    const { setUp, net } = session;
    return [{ id, at: 0, statement, verdict: "log", setUp, net, history: [], ...fishNumber }];
  });
  return { ...session, entries: [...session.entries, ...entries] };
}
