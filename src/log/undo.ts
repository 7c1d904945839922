/** Which corrections undo takes back, and which redo brings back. */
import type { EventBody, LogEvent } from "./event.ts";
import { splitFrom } from "./pieces.ts";

export interface Steps {
  /** Corrections that count, oldest first: undo withdraws the last. */
  corrections: readonly LogEvent[];
  /** Withdrawals of corrections that count, oldest first: redo withdraws the last. */
  undone: readonly LogEvent[];
}

const CORRECTING: readonly EventBody["kind"][] = [
  "amend",
  "replace",
  "settle",
  "withdraw",
  "weigh",
];

/** Whether an event is one that undo may take back. */
export const isStep = ({ body }: LogEvent): boolean => CORRECTING.includes(body.kind);

/**
 * Every step back is a withdrawal, and so is every step forward again: what a withdrawal is depends
 * on what it withdraws. A new correction ends the way forward: what was undone before it stays
 * undone. Steps about events that are not there, or that count for nothing, are left out.
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
  let undone: LogEvent[] = [];
  for (const event of asDone(events.filter(isStep))) {
    const step = stepOf(event, steps);
    steps.set(event.id, step);
    const isAbout = event.body.kind === "weigh" || about(event).some((id) => known.has(id));
    if (step === "correction" && isAbout) undone = [];
    const counts = event.body.kind === "withdraw" ? effective.has(event) : true;
    if (!counts || withdrawals.has(event.id) || !isAbout) continue;
    if (step === "correction") corrections.push(event);
    if (step === "undo") undone.push(event);
  }
  return { corrections, undone };
}

/** The ids an event is about; none for what happened by itself. */
export function about(event: LogEvent): readonly string[] {
  const { body } = event;
  if (body.kind === "withdraw") return body.targets;
  const one = "target" in body ? body.target : splitFrom(event);
  return one === undefined ? [] : [one];
}

/**
 * The steps as they were done: each behind those that it is about, and behind its device's last,
 * though the clock of another was ahead. Rings stay in order, at the end.
 * @param steps in order
 */
function asDone(steps: readonly LogEvent[]): Iterable<LogEvent> {
  const earlier = earlierThan(steps);
  const held = new Map<LogEvent, LogEvent[]>();
  const done = new Set<LogEvent>();
  for (const step of steps) {
    const ready = [step];
    // It grows on the way.
    for (const next of ready) {
      const before = earlier.get(next) ?? [];
      while (done.has(before.at(-1) ?? next)) before.pop();
      const waitsFor = before.at(-1);
      if (waitsFor) {
        const others = held.get(waitsFor);
        if (others) others.push(next);
        else held.set(waitsFor, [next]);
      } else {
        done.add(next);
        for (const one of held.get(next) ?? []) ready.push(one);
      }
    }
  }
  for (const step of steps) done.add(step);
  return done;
}

/** What each step comes after. */
function earlierThan(steps: readonly LogEvent[]): Map<LogEvent, LogEvent[]> {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const lastOf = new Map<string, LogEvent>();
  const earlier = new Map<LogEvent, LogEvent[]>();
  for (const step of steps) {
    const targets = about(step).map((id) => byId.get(id));
    const all = [...targets, lastOf.get(step.device)];
    earlier.set(
      step,
      all.filter((one) => one !== undefined),
    );
    lastOf.set(step.device, step);
  }
  return earlier;
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
