/** Entries and heard lines as their corrections leave them. */
import { applyAmend } from "./amend.ts";
import type { EntryStatement, LogEvent } from "./event.ts";
import { comparePlaces, type Place } from "./order.ts";
import { placesOfPieces } from "./pieces.ts";
import type { EventOf, withdrawalsThatCount } from "./withdrawal.ts";

/** One event that happened, with all that was said about it since. */
export interface Revision extends Place {
  event: LogEvent;
  /** Absent for what is no entry: a line not taken, a plan, a weighing. */
  statement?: EntryStatement;
  verdict: "log" | "check";
  /** The event and the corrections of it that count, oldest first. */
  history: readonly LogEvent[];
  /** The newest of the withdrawals that took it back. */
  withdrawnBy?: LogEvent;
}

type Correction = EventOf<"amend"> | EventOf<"replace"> | EventOf<"settle">;

const isCorrection = (event: LogEvent): event is Correction => "target" in event.body;

/** An event about which nothing else was said. */
export function unrevised(event: LogEvent): Revision {
  const { id, at, device, seq, body } = event;
  const revision: Revision = { id, at, device, seq, event, verdict: seen(event), history: [event] };
  if (body.kind === "entry") revision.statement = body.statement;
  return revision;
}

/**
 * @param events each once, in order
 * @param withdrawals those that count, by the id they take back
 * @returns what happened, in order of time as amended
 */
export function revise(
  events: readonly LogEvent[],
  withdrawals: ReturnType<typeof withdrawalsThatCount>,
): Revision[] {
  const corrections = new Map<string, Correction[]>();
  for (const event of events) {
    if (!isCorrection(event) || withdrawals.has(event.id)) continue;
    const earlier = corrections.get(event.body.target);
    if (earlier) earlier.push(event);
    else corrections.set(event.body.target, [event]);
  }
  const pieces = placesOfPieces(events);
  return events
    .filter((event) => event.body.kind !== "withdraw" && !isCorrection(event))
    .map((event) => ({
      ...revised(event, corrections.get(event.id) ?? [], withdrawals.get(event.id) ?? []),
      ...pieces.get(event.id),
    }))
    .sort(comparePlaces);
}

function revised(
  event: LogEvent,
  corrections: readonly Correction[],
  withdrawals: readonly LogEvent[],
): Revision {
  const revision = unrevised(event);
  for (const correction of corrections) correct(revision, correction);
  const withdrawnBy = withdrawals.at(-1);
  if (withdrawnBy) revision.withdrawnBy = withdrawnBy;
  if (corrections.length + withdrawals.length > 0) {
    revision.history = [event, ...[...corrections, ...withdrawals].sort(comparePlaces)];
  }
  return revision;
}

function correct(revision: Revision, correction: Correction): void {
  const { kind } = revision.event.body;
  if (kind !== "entry" && kind !== "heard") return;
  const { body } = correction;
  if (body.kind === "replace") {
    revision.statement = body.statement;
    revision.verdict = seen(correction);
  } else if (body.kind === "settle") {
    revision.verdict = "log";
  } else if (revision.statement) {
    revision.statement = applyAmend(revision.statement, body.set, body.clear);
    if (body.at !== undefined) revision.at = body.at;
    if (correction.verdict === "check") revision.verdict = "check";
  }
}

const seen = (event: LogEvent) => (event.verdict === "log" ? "log" : "check");
