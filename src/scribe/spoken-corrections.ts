/** What "make that", "fish seven was" and "scratch that" write. */
import type { StatementOf } from "../../grammar/statement.ts";
import { canTake } from "../log/amend.ts";
import { correctionOf } from "../log/correction.ts";
import type { EventBody, LogEvent } from "../log/event.ts";
import { comparePlaces } from "../log/order.ts";
import { resolveTarget } from "../log/resolve.ts";
import type { Entry, Session } from "../log/session.ts";
import { apart, withCount } from "../log/splitting.ts";
import { split, stepOf } from "./hand-notes.ts";
import type { Note } from "./notebook.ts";

type Write = (body: EventBody) => Note;

/** The session with what the utterance wrote so far, and the entry on the screen, by its id. */
interface Asked {
  session: Session;
  inQuestion: string | undefined;
}

/**
 * The values of one entry. A number is one fish: said of an entry of several, that fish is told
 * apart from the others, which stay as they were; only where the count itself is put right is the
 * whole entry meant.
 * @returns undefined where there is nothing that the values fit
 */
export function amending(
  { of, set }: StatementOf<"amend">,
  { session, inQuestion }: Asked,
  write: Write,
): Note[] | undefined {
  if (of === "last" && inQuestion !== undefined) {
    const entry = session.entries.find(({ id }) => id === inQuestion);
    if (!entry || !canTake(entry.statement, set)) return undefined;
    const amend = write({ kind: "amend", target: entry.id, set });
    const isSettled = entry.verdict === "check" && amend.verdict === "log";
    return isSettled ? [amend, write({ kind: "settle", target: entry.id })] : [amend];
  }
  const [target] = resolveTarget(session, of, set) ?? [];
  const entry = session.entries.find(({ id }) => id === target);
  if (!entry) return undefined;
  const alone = of === "last" || set.count !== undefined ? undefined : apart(entry, of);
  const { statement } = entry;
  if (!alone || statement.kind !== "fish") {
    return [write({ kind: "amend", target: entry.id, set })];
  }
  const parts = alone.counts.map((count) => withCount(statement, count));
  const notes = split(write, entry, parts);
  const pieces = notes.filter(({ body }) => body.kind === "entry");
  const one = [entry.id, ...pieces.map(({ id }) => id)][alone.index] ?? entry.id;
  return [...notes, write({ kind: "amend", target: one, set })];
}

/**
 * "Last" is the last thing done: a spoken correction, if nothing has happened since, or an entry. A
 * number takes out one fish, and of an entry of several leaves the others.
 * @param notes what the utterance wrote so far
 */
export function withdrawing(
  { of }: StatementOf<"withdraw">,
  { session, inQuestion }: Asked,
  notes: readonly Note[],
  write: Write,
): Note[] | undefined {
  if (of !== "last") return withoutFish(session, of, write);
  const targets = lastDone(session, notes, inQuestion);
  return targets && [write({ kind: "withdraw", targets: [...targets] })];
}

function withoutFish(session: Session, number: number, write: Write): Note[] | undefined {
  const [target] = resolveTarget(session, number) ?? [];
  const entry = session.entries.find(({ id }) => id === target);
  if (!entry) return undefined;
  const { statement } = entry;
  if (statement.kind !== "fish" || !apart(entry, number)) {
    return [write({ kind: "withdraw", targets: [entry.id] })];
  }
  const left = correctionOf(statement, withCount(statement, (statement.count ?? 1) - 1));
  return left.by === "amend"
    ? [write({ kind: "amend", target: entry.id, set: left.set, clear: left.clear })]
    : undefined;
}

function lastDone(
  session: Session,
  notes: readonly Note[],
  inQuestion: string | undefined,
): readonly string[] | undefined {
  const taken = new Set(
    notes.flatMap(({ body }) => (body.kind === "withdraw" ? body.targets : [])),
  );
  const before = notes.findLast(({ id, body }) => body.kind !== "withdraw" && !taken.has(id));
  if (before) return [before.id];
  if (inQuestion !== undefined) return ofQuestion(session, inQuestion);
  const correction = lastSpokenCorrection(session);
  if (correction && !taken.has(correction.id)) return stepOf(correction, session);
  return resolveTarget(session, "last");
}

/** What was last said of the entry, if that was the last correction of all, else the entry. */
function ofQuestion(session: Session, id: string): readonly string[] | undefined {
  const last = session.corrections.at(-1);
  const isOfIt = last && "target" in last.body && last.body.target === id && isSpoken(last);
  if (isOfIt) return stepOf(last, session);
  return session.entries.some((entry) => entry.id === id) ? [id] : undefined;
}

/**
 * The newest spoken change of an entry, unless an entry came after it. Taking something back is not
 * one of them: said twice, "scratch that" takes back two things.
 */
function lastSpokenCorrection({ corrections, entries }: Session): LogEvent | undefined {
  const last = corrections.findLast((one) => one.body.kind === "amend" && isSpoken(one));
  const newest: Entry | undefined = entries.at(-1);
  const written = newest?.history[0];
  return last && written && comparePlaces(written, last) < 0 ? last : undefined;
}

const isSpoken = ({ heard }: LogEvent): boolean => heard !== undefined && heard.by !== "touched";
