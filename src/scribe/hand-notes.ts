/** What each correction writes. Nothing is written here, so that it can be shown before it is. */
import { type Correction, correctionOf } from "../log/correction.ts";
import type { EntryStatement, EventBody, Heard, LogEvent } from "../log/event.ts";
import { newId } from "../log/identity.ts";
import { splitFrom } from "../log/pieces.ts";
import type { Entry, HeardLine, Session } from "../log/session.ts";
import { type Note, note } from "./notebook.ts";

const TOUCHED: Heard = { text: "", by: "touched" };

/** Makes the notes of one touch, which one undo takes back together. */
export function touch(): (body: EventBody) => Note {
  const group = newId();
  return (body) => note(body, "log", { heard: TOUCHED, group });
}

/**
 * An entry that should have been `after`, at `at` (milliseconds since the epoch). One that was
 * marked for a look is read anew, which takes the mark off. Empty where nothing is different.
 */
export function corrected(entry: Entry, after: EntryStatement, at: number): Note[] {
  const write = touch();
  const { id: target, statement, verdict } = entry;
  const correction = correctionOf(statement, after);
  const isMoved = at !== entry.at;
  const moved = isMoved ? { at } : {};
  const bodies: EventBody[] = bodyOf(correction, target, verdict === "check", moved);
  const isMoveLeft = isMoved && !bodies.some((body) => body.kind === "amend");
  if (isMoveLeft) bodies.push({ kind: "amend", target, set: {}, at });
  return bodies.map(write);
}

function bodyOf(
  correction: Correction,
  target: string,
  isMarked: boolean,
  moved: { at?: number },
): EventBody[] {
  switch (correction.by) {
    case "nothing":
      return isMarked ? [{ kind: "settle", target }] : [];
    case "replace":
      return [{ kind: "replace", target, statement: correction.statement }];
    case "amend": {
      const { set, clear } = correction;
      const amend: EventBody = {
        kind: "amend",
        target,
        set,
        ...(clear.length > 0 && { clear }),
        ...moved,
      };
      return isMarked ? [amend, { kind: "settle", target }] : [amend];
    }
  }
}

/** An entry never said. No event is written into the past, so it is written now and then moved. */
export function added(statement: EntryStatement, at: number): Note[] {
  return placed(touch(), { kind: "entry", statement }, at, undefined);
}

/** A line that was not taken, as entries: the first takes its place, the others stand beside it. */
export function adopted(
  line: HeardLine,
  [first, ...others]: readonly EntryStatement[],
  at: number,
): Note[] {
  if (!first) return [];
  const write = touch();
  return [
    write({ kind: "replace", target: line.id, statement: first }),
    ...(at === line.at ? [] : [write({ kind: "amend", target: line.id, set: {}, at })]),
    ...piecesOf(write, line, others, at),
  ];
}

/**
 * An entry told apart: the first part stays in its place, the others follow it and are as doubtful.
 * The first comes last in the notes, as the step that the others belong to.
 * @param write makes the notes of one utterance or touch
 */
export function split(
  write: (body: EventBody) => Note,
  entry: Entry,
  [first, ...others]: readonly EntryStatement[],
): Note[] {
  if (!first) return [];
  const correction = correctionOf(entry.statement, first);
  return [
    ...piecesOf(write, entry, others, entry.at),
    ...bodyOf(correction, entry.id, false, {}).map(write),
  ];
}

/** As `split`, by an angler who has the entry before him and so settles it. */
export function splitByTouch(entry: Entry, parts: readonly EntryStatement[]): Note[] {
  const write = touch();
  const notes = split(write, { ...entry, verdict: "log" }, parts);
  const isMarked = entry.verdict === "check";
  return isMarked ? [...notes, write({ kind: "settle", target: entry.id })] : notes;
}

/** Two entries told as one, in the place of the first. */
export function joined(first: Entry, second: Entry, statement: EntryStatement): Note[] {
  const write = touch();
  const correction = correctionOf(first.statement, statement);
  return [
    ...bodyOf(correction, first.id, first.verdict === "check", {}).map(write),
    write({ kind: "withdraw", targets: [second.id] }),
  ];
}

/**
 * All that goes with a correction when it is undone: what one touch wrote; of an utterance, its
 * corrections and what they split off, but not what was said beside them.
 */
export function stepOf(correction: LogEvent, { entries, corrections }: Session): string[] {
  const { group, heard } = correction;
  if (group === undefined) return [correction.id];
  const isTouched = heard?.by === "touched";
  const isOfStep = ({ history: [event] }: Entry) =>
    isTouched || (event !== undefined && splitFrom(event) !== undefined);
  const same = [...entries.filter(isOfStep), ...corrections].filter((one) => one.group === group);
  return same.map(({ id }) => id);
}

/** Pieces of an entry or a line, each right behind the one before; they share what was heard. */
function piecesOf(
  write: (body: EventBody) => Note,
  { id, heard, verdict = "log" }: Pick<Entry, "id"> & Partial<Pick<Entry, "heard" | "verdict">>,
  statements: readonly EntryStatement[],
  at: number,
): Note[] {
  let beside = id;
  return statements.flatMap((statement) => {
    const made = (body: EventBody): Note => ({ ...write(body), verdict });
    const notes = placed(made, { kind: "entry", statement, beside }, at, heard);
    beside = notes[0]?.id ?? beside;
    return notes;
  });
}

function placed(
  write: (body: EventBody) => Note,
  body: EventBody,
  at: number,
  heard: Heard | undefined,
): Note[] {
  const entry = { ...write(body), ...(heard && { heard }) };
  return [entry, write({ kind: "amend", target: entry.id, set: {}, at })];
}
