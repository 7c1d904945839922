/** Which corrections undo takes back, and which redo brings back. */
import type { EventBody, LogEvent } from "./event.ts";

export interface Steps {
  /** Corrections that count, oldest first: undo withdraws the last. */
  corrections: readonly LogEvent[];
  /** Withdrawals of corrections that count, oldest first: redo withdraws the last. */
  undone: readonly LogEvent[];
}

const CORRECTING: readonly EventBody["kind"][] = ["amend", "replace", "settle", "withdraw"];

/**
 * Every step back is a withdrawal, and so is every step forward again: what a withdrawal is depends
 * on what it withdraws. Steps about events that are not there, or that count for nothing, are left
 * out.
 * @param events each once, in order
 * @param withdrawals those that count, by the id they take back
 */
export function sortSteps(
  events: readonly LogEvent[],
  withdrawals: ReadonlyMap<string, readonly LogEvent[]>,
): Steps {
  const known = new Set(events.map((event) => event.id));
  const effective = new Set([...withdrawals.values()].flat());
  const steps = new Map<string, "correction" | "undo" | "redo">();
  const corrections: LogEvent[] = [];
  const undone: LogEvent[] = [];
  for (const event of events) {
    if (!CORRECTING.includes(event.body.kind)) continue;
    const step = stepOf(event, steps);
    steps.set(event.id, step);
    const counts = event.body.kind === "withdraw" ? effective.has(event) : true;
    if (!counts || withdrawals.has(event.id) || !about(event).some((id) => known.has(id))) continue;
    if (step === "correction") corrections.push(event);
    if (step === "undo") undone.push(event);
  }
  return { corrections, undone };
}

/** The ids an event is about; none for what happened by itself. */
export function about({ body }: LogEvent): readonly string[] {
  if (body.kind === "withdraw") return body.targets;
  return "target" in body ? [body.target] : [];
}

function stepOf(
  event: LogEvent,
  steps: ReadonlyMap<string, "correction" | "undo" | "redo">,
): "correction" | "undo" | "redo" {
  if (event.body.kind !== "withdraw") return "correction";
  const targets = new Set(event.body.targets.map((id) => steps.get(id)));
  if (targets.has("undo")) return "redo";
  return targets.has("correction") || targets.has("redo") ? "undo" : "correction";
}
